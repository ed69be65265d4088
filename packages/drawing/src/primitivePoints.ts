import type { Point } from '@footmark/geometry';
import type { Primitive } from './primitive';

/** Points (m) whose box holds a primitive, but for weights, symbols and ornaments, which have their size on paper. */
export function primitivePoints(of: Primitive): readonly Point[] {
  switch (of.kind) {
    case 'line':
    case 'pattern':
      return of.points;
    case 'symbol':
      return [of.at];
    case 'circle':
      return [
        { x: of.centre.x - of.radius, y: of.centre.y - of.radius },
        { x: of.centre.x + of.radius, y: of.centre.y + of.radius },
      ];
  }
}
