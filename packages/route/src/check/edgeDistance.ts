import { distance, interpolate, type Point } from '@footmark/geometry';
import type { Shape } from '../request';

/** From a point to the edge of a shape, metres; negative inside. Infinity for a shape without points. */
export function edgeDistance(p: Point, shape: Shape): number {
  switch (shape.is) {
    case 'circle':
      return distance(p, shape.centre) - shape.radius;
    case 'ring': {
      const away = toPolyline(p, shape.points, shape.points.at(-1));
      return insideRing(p, shape.points) ? -away : away;
    }
    case 'line':
      return toPolyline(p, shape.points, shape.points[0]) - shape.halfWidth;
  }
}

/** `before`: where the segment to the first point starts. */
function toPolyline(p: Point, points: readonly Point[], before: Point | undefined): number {
  let least = Infinity;
  let from = before;
  for (const to of points) {
    if (from !== undefined) least = Math.min(least, toSegment(p, from, to));
    from = to;
  }
  return least;
}

function toSegment(p: Point, a: Point, b: Point): number {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const squared = dx * dx + dy * dy;
  if (squared === 0) return distance(p, a);
  const t = ((p.x - a.x) * dx + (p.y - a.y) * dy) / squared;
  return distance(p, interpolate(a, b, Math.min(1, Math.max(0, t))));
}

/** By how often a ray towards +x meets the ring. */
function insideRing(p: Point, ring: readonly Point[]): boolean {
  let inside = false;
  let from = ring.at(-1);
  for (const to of ring) {
    if (from !== undefined && from.y > p.y !== to.y > p.y) {
      const x = from.x + ((p.y - from.y) * (to.x - from.x)) / (to.y - from.y);
      if (p.x < x) inside = !inside;
    }
    from = to;
  }
  return inside;
}
