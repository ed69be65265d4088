import {
  cross,
  cutAngleAt,
  distance,
  type Point,
  scale,
  segmentCrossesRing,
  subtract,
} from '@footmark/geometry';
import type { TapeMeasure } from '../document/site';
import { settings } from '../rules/settings';
import { segmentMeetsBounds } from './bounds';
import type { DerivedFeature } from './deriveFeatures';
import type { ReferenceIndex, ReferencePoint } from './references';
import { type Side, sideOf } from './side';
import { worstAxis } from './worstAxis';

/** A taped distance (m) from a reference point, or the near face of one that is round, to a mark. */
export type Tie = { readonly from: ReferencePoint; readonly distance: number };

/** Two tapes that set a mark out, how well they cut, and a third to check by. */
export type Ties = {
  readonly pair: readonly [Tie, Tie];
  /** Angle (rad) between the tapes at the mark, in [0, π]. */
  readonly cutAngle: number;
  /** Larger half-axis (m) of the standard ellipse that the two tapes leave. */
  readonly worstAxis: number;
  /** Which side of the line from the first to the second reference the mark lies on. */
  readonly side: Side;
  readonly check: Tie | null;
};

/** Reference points that are tried for one mark, nearest first: pairs grow with the square, and far ones tape badly. */
const MOST_CANDIDATES = 14;

/** A tape from closer than this (m) only says that the mark is at the reference. */
const SHORTEST_TIE_M = 0.15;

/** Tapes that run almost in one line (sine of the cut angle below this) fix nothing. */
const WEAKEST_SINE = 0.05;

/** A check reads differently at a wrong place by this many deviations of the tape: less is lost in the pull. */
const CHECK_TELLS_SIGMAS = 5;

/** Pairs whose ellipses differ by less (m) count as equal, and the nearer one stays. */
const TIE_EQUAL_M = 1e-6;

/**
 * Picks, among the reference points within the tape's length and in open sight, the pair with the smallest worst axis of the
 * resulting ellipse, and a third that cuts best with both and tells the mark from its mirror image. Null when no pair is to be had.
 */
export function chooseTies(
  mark: Point,
  references: ReferenceIndex,
  blocks: readonly DerivedFeature[],
  tape: TapeMeasure,
): Ties | null {
  const usable = candidates(mark, references, blocks, tape);
  let best: { a: Candidate; b: Candidate; worst: number } | null = null;
  for (const [i, a] of usable.entries()) {
    for (let j = i + 1; j < usable.length; j++) {
      const b = usable[j];
      const sine = b === undefined ? 0 : sineOfCut(a, b);
      if (b === undefined || sine < WEAKEST_SINE) continue;
      const worst = worstAxis(sine, a.sigma, b.sigma);
      if (best === null || worst < best.worst - TIE_EQUAL_M) best = { a, b, worst };
    }
  }
  if (best === null) return null;
  const { a, b, worst } = best;
  return {
    pair: [a.tie, b.tie],
    cutAngle: cutAngleAt(mark, a.tie.from.at, b.tie.from.at),
    worstAxis: worst,
    side: sideOf(mark, a.tie.from.at, b.tie.from.at),
    check: checkTie(mark, [a, b], usable, tape),
  };
}

/** A tie that could be used: `toward` is the unit vector from the mark to the reference, `sigma` (m) the tape's deviation. */
type Candidate = { readonly tie: Tie; readonly toward: Point; readonly sigma: number };

/** Sine of the angle between two tapes at the mark, 0 to 1. */
function sineOfCut(a: Candidate, b: Candidate): number {
  return Math.abs(cross(a.toward, b.toward));
}

/** Of one tie (m): the pull, the tape's own length, and the reference when it was put on the sketch by eye. */
function tieSigma(tie: Tie, tape: TapeMeasure): number {
  const reference = tie.from.measured ? 0 : settings.assumedPointSigma.value;
  const pull = settings.tapeRelative.value * tie.distance;
  return Math.sqrt(tape.sigma ** 2 + pull ** 2 + reference ** 2);
}

function candidates(
  mark: Point,
  references: ReferenceIndex,
  blocks: readonly DerivedFeature[],
  tape: TapeMeasure,
): readonly Candidate[] {
  const found: Tie[] = [];
  const inSight = (from: ReferencePoint) =>
    !blocks.some(
      (block) =>
        segmentMeetsBounds(from.at, mark, block.bounds) && segmentCrossesRing(from.at, mark, block.outline),
    );
  for (const from of references.nearestFirst(mark, tape.length)) {
    const tie = { from, distance: distance(from.at, mark) - from.faceRadius };
    const doubled = found.some((other) => distance(other.from.at, from.at) < SHORTEST_TIE_M);
    if (doubled || tie.distance < SHORTEST_TIE_M || !inSight(from)) continue;
    found.push(tie);
    if (found.length === MOST_CANDIDATES) break;
  }
  return found
    .sort((a, b) => a.distance - b.distance || (a.from.key < b.from.key ? -1 : 1))
    .map((tie) => ({
      tie,
      toward: scale(subtract(tie.from.at, mark), 1 / (tie.distance + tie.from.faceRadius)),
      sigma: tieSigma(tie, tape),
    }));
}

/**
 * The third tape that cuts the weaker of the two best: a check that runs along a tape would find no error of it, and one from the
 * line of the two references none of a mark that was painted on the wrong side of it.
 */
function checkTie(
  mark: Point,
  [a, b]: readonly [Candidate, Candidate],
  usable: readonly Candidate[],
  tape: TapeMeasure,
): Tie | null {
  const mirrored = mirroredOver(mark, a.tie.from.at, b.tie.from.at);
  const told = CHECK_TELLS_SIGMAS * tape.sigma;
  let best: { tie: Tie; sine: number } | null = null;
  for (const third of usable) {
    if (third === a || third === b) continue;
    const { at } = third.tie.from;
    if (Math.abs(distance(at, mirrored) - distance(at, mark)) < told) continue;
    const sine = Math.min(sineOfCut(third, a), sineOfCut(third, b));
    if (sine < WEAKEST_SINE) continue;
    if (best === null || sine > best.sine + TIE_EQUAL_M) best = { tie: third.tie, sine };
  }
  return best?.tie ?? null;
}

/** The other place that two tapes give: the mark's image in the line of their references, which stand apart. */
function mirroredOver(mark: Point, a: Point, b: Point): Point {
  const along = scale(subtract(b, a), 1 / distance(a, b));
  const out = cross(along, subtract(mark, a));
  return { x: mark.x + 2 * out * along.y, y: mark.y - 2 * out * along.x };
}
