import { add, cross, distance, dot, interpolate, type Point, scale, subtract } from './point';
import { fail, ok, type Result } from './result';
import { COINCIDENT_M } from './tolerances';

/**
 * `points`: first the one left of the way from the first centre to the second. `cutAngle`: at which the tapes
 * meet, radians, 0 to π.
 */
export type CircleCuts = Readonly<{ points: readonly [Point, Point]; cutAngle: number }>;

/**
 * Where two tapes meet: the points `r1` from `c1` and `r2` from `c2`, metres. Tapes that cannot meet give
 * `too-short` (together they do not span the centres) or `too-long` (one is longer than the other and the
 * base together), with the missing metres in `values.gap`. A gap up to `COINCIDENT_M`, or two points nearer
 * than that to each other, is a tangent: the same point twice. Centres within `COINCIDENT_M` give
 * `same-centre`. Throws a RangeError on a negative or non-finite tape. The triangle's height comes from its
 * three sides (Heron), which stays exact for flat triangles.
 */
export function intersectCircles(
  c1: Point,
  r1: number,
  c2: Point,
  r2: number,
): Result<CircleCuts, 'too-short' | 'too-long' | 'same-centre'> {
  if (!(r1 >= 0 && r2 >= 0 && r1 + r2 < Infinity))
    throw new RangeError(`intersectCircles: radii ${r1}, ${r2}`);
  const base = distance(c1, c2);
  if (base <= COINCIDENT_M) return fail('same-centre');
  const apart = base - (r1 + r2);
  if (apart > COINCIDENT_M) return fail('too-short', { gap: apart });
  const within = Math.abs(r1 - r2) - base;
  if (within > COINCIDENT_M) return fail('too-long', { gap: within });

  const along = (base + ((r1 - r2) * (r1 + r2)) / base) / 2;
  const sixteenAreas = (base + r1 + r2) * -apart * -within * (base + Math.abs(r1 - r2));
  const height = Math.sqrt(Math.max(0, sixteenAreas)) / (2 * base);
  const aside = 2 * height <= COINCIDENT_M ? 0 : height / base;
  const foot = interpolate(c1, c2, along / base);
  const left = { x: foot.x - aside * (c2.y - c1.y), y: foot.y + aside * (c2.x - c1.x) };
  const right = { x: foot.x + aside * (c2.y - c1.y), y: foot.y - aside * (c2.x - c1.x) };
  return ok({ points: [left, right], cutAngle: cutAngleAt(left, c1, c2) });
}

/**
 * Where two tapes that do not meet come nearest to each other: half-way over the gap between their circles, on the line of the
 * centres. Tapes that meet give the foot of their crossings on that line; centres within `COINCIDENT_M`, which tell no direction,
 * the first of them.
 */
export function closestApproach(c1: Point, r1: number, c2: Point, r2: number): Point {
  const base = distance(c1, c2);
  if (base <= COINCIDENT_M) return c1;
  const onLine = (metres: number) => add(c1, scale(subtract(c2, c1), metres / base));
  if (base > r1 + r2) return onLine((base + r1 - r2) / 2);
  if (r1 > base + r2) return onLine((r1 + base + r2) / 2);
  if (r2 > base + r1) return onLine((base - r1 - r2) / 2);
  return onLine((base + ((r1 - r2) * (r1 + r2)) / base) / 2);
}

/**
 * The angle at `p` between the lines to `a` and `b`, radians, 0 to π: how squarely two tapes cut. 0 when `p`
 * lies on one of them, where there is no cut.
 */
export function cutAngleAt(p: Point, a: Point, b: Point): number {
  const toA = subtract(a, p);
  const toB = subtract(b, p);
  return Math.atan2(Math.abs(cross(toA, toB)), dot(toA, toB));
}
