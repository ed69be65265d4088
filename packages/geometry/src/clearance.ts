import type { Clearance } from './clearanceType';
import { depthInRing } from './depthInRing';
import { visitLegs } from './legs';
import { add, distance, type Point, scale, subtract } from './point';
import { nearestOnPolyline } from './polyline';
import { pointInRing } from './ring';
import { segmentDistance } from './segment';
import { NEGLIGIBLE_LENGTH_M } from './tolerances';

/**
 * From a point to the edge of a circle (a trunk, a well). From the very centre every edge point is as near,
 * and the one towards +x is given.
 */
export function pointToCircle(p: Point, centre: Point, radius: number): Clearance {
  const away = distance(p, centre);
  const outward = away > NEGLIGIBLE_LENGTH_M ? scale(subtract(p, centre), 1 / away) : { x: 1, y: 0 };
  return { distance: away - radius, from: p, at: add(centre, scale(outward, radius)) };
}

/**
 * From a point to a ring (a building, a lot): negative inside. Throws a RangeError when the ring has no
 * corner.
 */
export function pointToRing(p: Point, ring: readonly Point[]): Clearance {
  const nearest = nearestOnPolyline(p, ring, true);
  const sign = pointInRing(p, ring) === 'inside' ? -1 : 1;
  return { distance: sign * nearest.distance, from: p, at: nearest.point };
}

/** From a point to an open polyline, never negative. Throws a RangeError when it has no point. */
export function pointToPolyline(p: Point, points: readonly Point[]): Clearance {
  const nearest = nearestOnPolyline(p, points, false);
  return { distance: nearest.distance, from: p, at: nearest.point };
}

/** From an open polyline to the edge of a circle: the depth of its deepest point where it runs through. */
export function polylineToCircle(points: readonly Point[], centre: Point, radius: number): Clearance {
  return pointToCircle(nearestOnPolyline(centre, points, false).point, centre, radius);
}

/**
 * Between two open polylines, 0 where they meet. Either may be a single point; throws a RangeError when one
 * is empty.
 */
export function polylineToPolyline(first: readonly Point[], second: readonly Point[]): Clearance {
  return between(first, second, false);
}

/**
 * From an open polyline to a ring: outside the least distance, 0 when it touches, and negative by the depth
 * of its deepest point (to within `DEPTH_M`) where it runs through the ring. Throws a RangeError when either
 * is empty.
 */
export function polylineToRing(points: readonly Point[], ring: readonly Point[]): Clearance {
  return depthInRing(points, ring) ?? between(points, ring, true);
}

function between(first: readonly Point[], second: readonly Point[], closed: boolean): Clearance {
  const [start] = first;
  if (start === undefined) throw new RangeError('clearance: no points');
  const nearest = nearestOnPolyline(start, second, closed);
  let least: Clearance = { distance: nearest.distance, from: start, at: nearest.point };
  const note = (found: Clearance) => {
    if (found.distance < least.distance) least = found;
  };
  visitLegs(first, false, (a, b) => {
    visitLegs(second, closed, (c, d) => {
      const found = segmentDistance(a, b, c, d);
      note({ distance: found.distance, from: found.from, at: found.to });
    });
  });
  const [only] = second;
  if (only !== undefined && second.length === 1) {
    const back = nearestOnPolyline(only, first, false);
    note({ distance: back.distance, from: back.point, at: only });
  }
  return least;
}
