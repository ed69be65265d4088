import { chordCount } from './arc';
import { ellipseOutline } from './ellipseOutline';
import { distance, midpoint, type Point } from './point';
import { REACH_SAGITTA_M } from './reachOf';
import { fail, ok, type Result } from './result';
import { COINCIDENT_M, NEGLIGIBLE_LENGTH_M } from './tolerances';

/**
 * Where a pipe between the known points `a` and `b` can run at all: inside the ellipse about `at` with these foci and that `string`
 * (metres: the cable, or the distance when that is longer). `theta` of the major axis is counter-clockwise from +x, radians in
 * (−π/2, π/2], 0 for a circle. `halfWidth` metres to either side is the furthest that the pipe can be from the line a–b; `area` in
 * square metres. `outline` is a ring of points on the ellipse, counter-clockwise. `short`: metres that the cable lacks but is allowed
 * to, 0 when it lacks none.
 */
export type PipeReach = Readonly<{
  a: Point;
  b: Point;
  at: Point;
  string: number;
  semiMajor: number;
  semiMinor: number;
  theta: number;
  halfWidth: number;
  area: number;
  outline: readonly Point[];
  short: number;
}>;

/**
 * The reach of a pipe that takes `cable` metres from `a` to `b`: at any place p of it |ap| + |pb| ≤ cable, so the semi-axes are L/2 and
 * ½√(L² − d²). It is as certain as the cable is, as with `reachOf`. A cable up to `tolerance` metres (at least `COINCIDENT_M`) shorter
 * than the distance is taken for the straight line: an ellipse without width, its outline the two ends; one that is shorter still gives
 * `apart` with the missing metres in `values.gap`. `a` and `b` can be one point: the reach is then a circle. Throws a RangeError for a
 * negative or non-finite cable or tolerance and for a non-finite point.
 */
export function pipeReach(
  a: Point,
  b: Point,
  cable: number,
  tolerance = 0,
  maxSagitta = REACH_SAGITTA_M,
): Result<PipeReach, 'apart'> {
  const base = distance(a, b);
  if (!(cable >= 0 && tolerance >= 0 && base + cable + tolerance < Infinity)) {
    throw new RangeError(`pipeReach: cable ${cable}, tolerance ${tolerance}, distance ${base}`);
  }
  const gap = base - cable;
  if (gap > Math.max(tolerance, COINCIDENT_M)) return fail('apart', { gap });
  const string = Math.max(cable, base);
  const semiMajor = string / 2;
  const semiMinor = Math.sqrt((string - base) * (string + base)) / 2;
  const at = midpoint(a, b);
  const theta = base === 0 ? 0 : axisAngle(a, b);
  const outline =
    semiMinor > 0
      ? ellipseOutline(at, semiMajor, semiMinor, theta, cornersFor(semiMajor, maxSagitta))
      : base > 0
        ? [a, b]
        : [a];
  const area = Math.PI * semiMajor * semiMinor;
  const short = Math.max(0, gap);
  return ok({ a, b, at, string, semiMajor, semiMinor, theta, halfWidth: semiMinor, area, outline, short });
}

/**
 * True when the pipe can come to `p`, the outline included. Rounding is allowed for with `NEGLIGIBLE_LENGTH_M` of string and no more:
 * on a taut string a tenth of a millimetre is an inch to the side.
 */
export function withinPipeReach(p: Point, { a, b, string }: PipeReach): boolean {
  return distance(a, p) + distance(p, b) <= string + NEGLIGIBLE_LENGTH_M;
}

/** As many as the circle over the major axis takes: squeezed to the ellipse no chord of it gets further away. */
function cornersFor(semiMajor: number, maxSagitta: number): number {
  return Math.max(3, chordCount(semiMajor, 2 * Math.PI * semiMajor, maxSagitta));
}

/** Direction of the line ab either way, counter-clockwise from +x, in (−π/2, π/2]. */
function axisAngle(a: Point, b: Point): number {
  const angle = Math.atan2(b.y - a.y, b.x - a.x);
  if (angle > Math.PI / 2) return angle - Math.PI;
  return angle <= -Math.PI / 2 ? angle + Math.PI : angle;
}
