import type { Clearance } from './clearanceType';
import { visitLegs } from './legs';
import { interpolate, type Point } from './point';
import { nearestOnPolyline } from './polyline';
import { pointInRing, stretchesInRing } from './ring';
import { nearestOnSegment } from './segment';
import { DEPTH_M } from './tolerances';

/**
 * The deepest point of an open polyline inside a ring as a negative clearance, or null when no part of it
 * lies inside.
 *
 * Along a straight stretch the distance to each edge is convex, so between two samples the depth is at most
 * the least over the edges of the larger of the two sampled distances. Stretches are halved until that bound
 * is within `DEPTH_M` of the deepest sample.
 */
export function depthInRing(points: readonly Point[], ring: readonly Point[]): Clearance | null {
  let deepest: Clearance | null = null;
  const note = (from: Point) => {
    const nearest = nearestOnPolyline(from, ring, true);
    if (nearest.distance > -(deepest?.distance ?? 0)) {
      deepest = { distance: -nearest.distance, from, at: nearest.point };
    }
  };
  const [only] = points;
  if (only !== undefined && points.length === 1 && pointInRing(only, ring) === 'inside') note(only);
  visitLegs(points, false, (a, b) => {
    for (const stretch of stretchesInRing(a, b, ring)) {
      const open: [Point, Point][] = [[interpolate(a, b, stretch.from), interpolate(a, b, stretch.to)]];
      for (let pair = open.pop(); pair !== undefined; pair = open.pop()) {
        const [from, to] = pair;
        const middle = interpolate(from, to, 0.5);
        note(from);
        note(to);
        note(middle);
        const soFar = -(deepest?.distance ?? 0);
        if (depthBound(from, middle, ring) > soFar + DEPTH_M) open.push([from, middle]);
        if (depthBound(middle, to, ring) > soFar + DEPTH_M) open.push([middle, to]);
      }
    }
  });
  return deepest;
}

function depthBound(from: Point, to: Point, ring: readonly Point[]): number {
  let bound = Infinity;
  visitLegs(ring, true, (c, d) => {
    const larger = Math.max(nearestOnSegment(from, c, d).distance, nearestOnSegment(to, c, d).distance);
    bound = Math.min(bound, larger);
  });
  return bound;
}
