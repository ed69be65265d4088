import type { Point } from '@footmark/geometry';
import type { Shape } from '../request';
import type { Direction } from './direction';

/**
 * The lines in a direction that touch a shape grown by `reach` (m) and do not enter it there, each by how far to the right of the frame's
 * origin it lies. A shortest way between shapes has its legs on such lines, or on such through its start or end.
 */
export function tracksBeside(shape: Shape, reach: number, { right }: Direction): readonly number[] {
  const offset = (p: Point) => p.x * right.x + p.y * right.y;
  switch (shape.is) {
    case 'circle': {
      const at = offset(shape.centre);
      return [at - shape.radius - reach, at + shape.radius + reach];
    }
    case 'line':
      return besideCorners(shape.points.map(offset), false, shape.halfWidth + reach);
    case 'ring':
      return besideCorners(shape.points.map(offset), true, reach);
  }
}

function besideCorners(offsets: readonly number[], closed: boolean, reach: number): readonly number[] {
  const found: number[] = [];
  const count = offsets.length;
  for (const [i, at] of offsets.entries()) {
    const before = offsets[i - 1] ?? (closed ? offsets[count - 1] : undefined) ?? at;
    const after = offsets[i + 1] ?? (closed ? offsets[0] : undefined) ?? at;
    if (before <= at && after <= at) found.push(at + reach);
    if (before >= at && after >= at) found.push(at - reach);
  }
  return found;
}
