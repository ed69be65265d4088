import { arcLength, longChord } from './curve';
import { fail, ok, type Result } from './result';
import { PLAT_ANGLE_RAD, PLAT_LENGTH_M } from './tolerances';

/**
 * A curve as a plat tells it: metres and radians, all above 0, of `arcLength`, `delta` (the central angle) and `chordLength` as
 * many as it gives. It leaves along the leg before it when `tangent`, else its chord has an azimuth.
 */
export type PlatArc = Readonly<{
  radius: number;
  turn: 'left' | 'right';
  arcLength?: number;
  delta?: number;
  chordLength?: number;
  chordAzimuth?: number;
  tangent?: boolean;
}>;

/** `sweep` is right positive; `chord` is the azimuth of the chord, null for a curve that leaves along the leg before it. */
export type SolvedArc = Readonly<{ radius: number; sweep: number; chord: number | null }>;

/**
 * `not-positive`: a radius, length or angle that is not above 0. `extent-missing`: nothing says how long the curve is.
 * `direction-missing`: neither a chord's azimuth nor that it is tangent. `past-full-circle`: it turns through 2π or more.
 * `chord-past-diameter`: no chord is that long. The other three name two things that contradict each other.
 */
export type PlatArcProblem =
  | 'not-positive'
  | 'extent-missing'
  | 'direction-missing'
  | 'past-full-circle'
  | 'chord-past-diameter'
  | 'delta-against-arc-length'
  | 'chord-against-delta'
  | 'chord-against-arc-length';

/**
 * The arc that a plat describes. Of several measures of its extent the central angle is taken before the arc's length, and that
 * before the chord, which alone means the shorter way round; all are held against each other within what a plat rounds away.
 * A failure's values are the contradicting ones: as `given`, and as `computed` from the other (metres; radians for an angle).
 */
export function arcFromPlat(plat: PlatArc): Result<SolvedArc, PlatArcProblem> {
  const { radius, arcLength: along, delta, chordLength } = plat;
  for (const given of [radius, along, delta, chordLength]) {
    if (given !== undefined && !(given > 0)) return fail('not-positive', { given });
  }
  if (chordLength !== undefined && chordLength > 2 * radius + PLAT_LENGTH_M) {
    return fail('chord-past-diameter', { given: chordLength, computed: 2 * radius });
  }
  const angle =
    delta ??
    (along !== undefined
      ? along / radius
      : chordLength !== undefined
        ? 2 * Math.asin(Math.min(1, chordLength / (2 * radius)))
        : null);
  if (angle === null) return fail('extent-missing');
  if (angle >= 2 * Math.PI) return fail('past-full-circle', { given: angle });

  const slack = PLAT_LENGTH_M + radius * PLAT_ANGLE_RAD;
  if (delta !== undefined && along !== undefined) {
    const computed = arcLength(radius, delta);
    if (Math.abs(along - computed) > slack)
      return fail('delta-against-arc-length', { given: along, computed });
  }
  if (chordLength !== undefined) {
    const computed = longChord(radius, angle);
    if (Math.abs(chordLength - computed) > slack) {
      return fail(delta === undefined ? 'chord-against-arc-length' : 'chord-against-delta', {
        given: chordLength,
        computed,
      });
    }
  }
  if (plat.chordAzimuth === undefined && plat.tangent !== true) return fail('direction-missing');
  return ok({
    radius,
    sweep: plat.turn === 'right' ? angle : -angle,
    chord: plat.chordAzimuth ?? null,
  });
}
