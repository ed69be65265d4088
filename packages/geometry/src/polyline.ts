import { visitLegs } from './legs';
import { distance, type Point } from './point';
import { nearestOnSegment } from './segment';

/** Length of the open polyline, metres; 0 for fewer than two points. */
export function polylineLength(points: readonly Point[]): number {
  let sum = 0;
  visitLegs(points, false, (a, b) => {
    sum += distance(a, b);
  });
  return sum;
}

/**
 * `leg` runs from point `leg` to the next (the closing leg is the last), `t` is 0 to 1 on it, `along` is the
 * length from the first point, `distance` the least distance; metres.
 */
export type NearestOnPolyline = Readonly<{
  point: Point;
  distance: number;
  leg: number;
  t: number;
  along: number;
}>;

/**
 * The place of a polyline nearest to `p`; `closed` adds the leg from the last point to the first. The first
 * of equally near places is given; a single point is its own nearest, on leg 0. Throws a RangeError when
 * there is no point.
 */
export function nearestOnPolyline(p: Point, points: readonly Point[], closed: boolean): NearestOnPolyline {
  const [first] = points;
  if (first === undefined) throw new RangeError('nearestOnPolyline: no points');
  let nearest: NearestOnPolyline = { point: first, distance: distance(p, first), leg: 0, t: 0, along: 0 };
  let before = 0;
  visitLegs(points, closed, (a, b, leg) => {
    const length = distance(a, b);
    const found = nearestOnSegment(p, a, b);
    if (found.distance < nearest.distance) {
      const { point, t } = found;
      nearest = { point, distance: found.distance, leg, t, along: before + t * length };
    }
    before += length;
  });
  return nearest;
}
