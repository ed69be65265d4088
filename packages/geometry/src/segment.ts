import { cross, distance, dot, interpolate, midpoint, type Point, subtract } from './point';
import { COINCIDENT_M } from './tolerances';

/** `t` is 0 at `a` and 1 at `b`, always within; `distance` in metres. */
export type NearestOnSegment = Readonly<{ point: Point; t: number; distance: number }>;

/** The point of the closed segment ab nearest to `p`. A segment without length is its point, `t` 0. */
export function nearestOnSegment(p: Point, a: Point, b: Point): NearestOnSegment {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const squared = dx * dx + dy * dy;
  const t = squared > 0 ? Math.min(1, Math.max(0, ((p.x - a.x) * dx + (p.y - a.y) * dy) / squared)) : 0;
  const point = interpolate(a, b, t);
  return { point, t, distance: distance(p, point) };
}

/** `from` lies on the first segment, `to` on the second, `distance` metres apart. */
export type SegmentDistance = Readonly<{ distance: number; from: Point; to: Point }>;

/**
 * Least distance between the closed segments ab and cd, 0 where they meet. Where several places are equally
 * near (parallel segments) one of them is given.
 */
export function segmentDistance(a: Point, b: Point, c: Point, d: Point): SegmentDistance {
  const crossing = lineCrossing(a, b, c, d);
  if (crossing !== null) return { distance: 0, from: crossing.point, to: crossing.point };
  return nearestEnds(a, b, c, d);
}

/** `t` along ab and `u` along cd, 0 to 1. */
export type SegmentIntersection =
  | Readonly<{ kind: 'none' }>
  | Readonly<{ kind: 'point'; point: Point; t: number; u: number }>
  | Readonly<{ kind: 'overlap'; from: Point; to: Point }>;

/**
 * Where the segments ab and cd meet. One policy for ends, with `COINCIDENT_M` as the tolerance:
 *
 * - `included`: an end that lies on the other segment (within the tolerance) counts as a meeting point;
 * - `excluded`: only crossings count, and none of the four ends may lie on the other segment.
 *
 * Segments on one line that share more than `COINCIDENT_M` give `overlap` under both. A segment without length
 * only ever touches, so it gives `none` when ends are excluded.
 */
export function intersectSegments(
  a: Point,
  b: Point,
  c: Point,
  d: Point,
  ends: 'included' | 'excluded',
): SegmentIntersection {
  const overlap = overlapOf(a, b, c, d);
  if (overlap !== null) return overlap;
  const near = nearestEnds(a, b, c, d);
  const crossing = lineCrossing(a, b, c, d);
  if (near.distance <= COINCIDENT_M) {
    if (ends === 'excluded') return { kind: 'none' };
    const point = crossing === null ? midpoint(near.from, near.to) : crossing.point;
    return { kind: 'point', point, t: nearestOnSegment(point, a, b).t, u: nearestOnSegment(point, c, d).t };
  }
  return crossing === null ? { kind: 'none' } : { kind: 'point', ...crossing };
}

/** The crossing of two segments that are not parallel, ends included, without tolerance. */
function lineCrossing(a: Point, b: Point, c: Point, d: Point): { point: Point; t: number; u: number } | null {
  const first = subtract(b, a);
  const second = subtract(d, c);
  const area = cross(first, second);
  if (area === 0) return null;
  const between = subtract(c, a);
  const t = cross(between, second) / area;
  const u = cross(between, first) / area;
  if (!(t >= 0 && t <= 1 && u >= 0 && u <= 1)) return null;
  return { point: interpolate(a, b, t), t, u };
}

/** Least distance among each of the four ends and the other segment. */
function nearestEnds(a: Point, b: Point, c: Point, d: Point): SegmentDistance {
  const fromA = nearestOnSegment(a, c, d);
  const fromB = nearestOnSegment(b, c, d);
  const toC = nearestOnSegment(c, a, b);
  const toD = nearestOnSegment(d, a, b);
  const least = Math.min(fromA.distance, fromB.distance, toC.distance, toD.distance);
  if (fromA.distance === least) return { distance: least, from: a, to: fromA.point };
  if (fromB.distance === least) return { distance: least, from: b, to: fromB.point };
  if (toC.distance === least) return { distance: least, from: toC.point, to: c };
  return { distance: least, from: toD.point, to: d };
}

/**
 * The shared stretch when the shorter segment lies along the longer one's line, both ends within the
 * tolerance.
 */
function overlapOf(
  a: Point,
  b: Point,
  c: Point,
  d: Point,
): Extract<SegmentIntersection, { kind: 'overlap' }> | null {
  if (distance(a, b) < distance(c, d)) return overlapOf(c, d, a, b);
  const length = distance(a, b);
  if (length <= COINCIDENT_M) return null;
  const along = { x: (b.x - a.x) / length, y: (b.y - a.y) / length };
  const toC = subtract(c, a);
  const toD = subtract(d, a);
  if (Math.abs(cross(along, toC)) > COINCIDENT_M || Math.abs(cross(along, toD)) > COINCIDENT_M) return null;
  const atC = dot(along, toC);
  const atD = dot(along, toD);
  const from = Math.max(0, Math.min(atC, atD));
  const to = Math.min(length, Math.max(atC, atD));
  if (to - from <= COINCIDENT_M) return null;
  return { kind: 'overlap', from: interpolate(a, b, from / length), to: interpolate(a, b, to / length) };
}
