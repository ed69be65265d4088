import { distance, type Point, pointToPolyline, pointToRing } from '@footmark/geometry';
import type { Shape } from '../request';

/** From a point to a shape's edge (m), negative inside. */
export function shapeDistance(p: Point, shape: Shape): number {
  switch (shape.is) {
    case 'circle':
      return distance(p, shape.centre) - shape.radius;
    case 'line':
      return pointToPolyline(p, shape.points).distance - shape.halfWidth;
    case 'ring':
      return pointToRing(p, shape.points).distance;
  }
}
