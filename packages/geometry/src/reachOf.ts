import type { Point } from './point';
import { areaInArcs, commonArcs, type KnownPoint, type ReachArc, ringOfArcs } from './reachArcs';
import { leastLengthening, worstPair, worstTrio } from './reachShortfall';
import { fail, ok, type Result } from './result';
import { COINCIDENT_M } from './tolerances';

/** Metres between the drawn outline of a reach and the true one at the most, when nothing else is asked for. */
export const REACH_SAGITTA_M = 0.002;

/**
 * Where a feature can be at all. `arcs` are its exact outline and `area` its exact area, square metres; `outline` is a ring of points on
 * the arcs for drawing, counter-clockwise. `short`: the metres that cables together lack but are allowed to, 0 when they lack none.
 *
 * - `disc`: within `radius` of `at`. One known point, or all other discs hold this one. Radius 0, no arcs and one point of outline
 *   where the cables are just long enough to meet.
 * - `lens`: where two discs overlap and all others hold that, up to `halfWidth` metres to either side of the line of their centres.
 * - `cells`: bounded by three arcs or more.
 */
export type Reach = Readonly<{
  arcs: readonly ReachArc[];
  outline: readonly Point[];
  area: number;
  short: number;
}> &
  (
    | Readonly<{ kind: 'disc'; at: Point; radius: number; halfWidth: number }>
    | Readonly<{ kind: 'lens'; halfWidth: number }>
    | Readonly<{ kind: 'cells' }>
  );

/**
 * `apart`: the cables of the pair `first`, `second` are together `gap` metres shorter than their distance. `no-common-place`: every two
 * have a place in common, but `first`, `second` and `third` have none before each of their cables is `each` metres longer. Indices of
 * the known points; the worst pair or trio is given.
 */
export type ReachProblem = 'apart' | 'no-common-place';

/**
 * The region that a feature cannot leave, as no cable is shorter than the straight line: what the discs about the known points, the
 * cable their radius, have in common. It is as certain as the cables are: whoever wants a counter's errors in it lengthens the cables by
 * them. The order of the known points only changes the indices. Two cables may be up to `tolerance` metres short together, and of three
 * or more each half of that, before it is a contradiction; at least `COINCIDENT_M`. Then the reach is the one point where they come
 * nearest. Throws a RangeError without known points, for a negative or non-finite cable or tolerance, and for a non-finite point.
 */
export function reachOf(
  knowns: readonly KnownPoint[],
  tolerance = 0,
  maxSagitta = REACH_SAGITTA_M,
): Result<Reach, ReachProblem> {
  refuseImpossible(knowns, tolerance);
  const allowed = Math.max(tolerance, COINCIDENT_M);
  const pair = worstPair(knowns);
  if (pair !== undefined && pair.gap > allowed) return fail('apart', pair);

  const arcs = commonArcs(knowns);
  if (arcs.length > 0) return ok(reachWithin(arcs, maxSagitta));

  const { each, at } = leastLengthening(knowns);
  const trio = 2 * each > allowed ? worstTrio(knowns) : undefined;
  if (trio !== undefined) return fail('no-common-place', trio);
  return ok({ kind: 'disc', at, radius: 0, halfWidth: 0, arcs, outline: [at], area: 0, short: 2 * each });
}

function reachWithin(arcs: readonly ReachArc[], maxSagitta: number): Reach {
  const shape = { arcs, outline: ringOfArcs(arcs, maxSagitta), area: areaInArcs(arcs), short: 0 };
  const [only] = arcs;
  if (only !== undefined && arcs.length === 1) {
    return { kind: 'disc', at: only.at, radius: only.radius, halfWidth: only.radius, ...shape };
  }
  if (arcs.length > 2) return { kind: 'cells', ...shape };
  // an arc of more than half a turn is widest at its centre, not at its ends
  const widths = arcs.map(({ radius, span }) => radius * Math.sin(Math.min(span, Math.PI) / 2));
  return { kind: 'lens', halfWidth: Math.max(...widths), ...shape };
}

function refuseImpossible(knowns: readonly KnownPoint[], tolerance: number): void {
  if (knowns.length === 0) throw new RangeError('reachOf: no known point');
  if (!(tolerance >= 0 && tolerance < Infinity)) throw new RangeError(`reachOf: tolerance ${tolerance}`);
  for (const { at, cable } of knowns) {
    if (!(cable >= 0 && Number.isFinite(cable + at.x + at.y))) {
      throw new RangeError(`reachOf: cable ${cable} from ${at.x}, ${at.y}`);
    }
  }
}
