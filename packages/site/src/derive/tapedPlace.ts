import { adjust, errorEllipse, type Observation } from '@footmark/adjust';
import { closestApproach, cutAngleAt, distance, intersectCircles, type Point } from '@footmark/geometry';
import { settings } from '../rules/settings';
import type { FindingCode, FindingValues, Severity } from './finding';
import { type Side, sideOf } from './side';
import { worstAxis } from './worstAxis';

/** A tape of `radius` metres from the middle of what it was taken from: to its point, or the taped distance and its face's radius. */
export type TapeCircle = { readonly centre: Point; readonly radius: number };

/** Where tapes put a point, and how far each is off there (m, taped minus computed, in their order) for three and more. */
export type TapedPlace = {
  readonly at: Point;
  readonly measured: boolean;
  readonly tapeResiduals?: readonly number[];
};

/** Says what is the matter; `names` gives the name of the point that the tape of that index is from. */
export type TapeReport = {
  readonly say: <Code extends FindingCode>(
    code: Code,
    severity: Severity,
    values: FindingValues[Code],
  ) => void;
  readonly names: (tape: number) => string;
};

/** Sums of squared misfits (m²) that differ by less tell no crossing from its mirror image: a tenth of a millimetre squared. */
const SAME_MISFIT_M2 = 1e-8;

/**
 * The crossing of two tapes on one side, seen from the first reference to the second. Tapes that do not meet give the place where
 * they come nearest to each other, as assumed.
 */
export function placeOfTwoTapes(
  [a, b]: readonly [TapeCircle, TapeCircle],
  side: Side,
  { say, names }: TapeReport,
): TapedPlace {
  const crossing = intersectCircles(a.centre, a.radius, b.centre, b.radius);
  if (!crossing.ok) {
    const gap = crossing.values?.gap ?? 0;
    const pair = { a: names(0), b: names(1) };
    if (crossing.code === 'same-centre') say('tapes-same-place', 'error', pair);
    else if (crossing.code === 'too-short') say('tapes-too-short', 'error', { gap, ...pair });
    else say('tapes-too-long', 'error', { gap, ...pair });
    return { at: closestApproach(a.centre, a.radius, b.centre, b.radius), measured: false };
  }
  const [left, right] = crossing.value.points;
  const at = side === 'left' ? left : right;
  const cut = cutAngleAt(at, a.centre, b.centre);
  if (isWeak(cut)) say('weak-cut', 'warning', { cut });
  return { at, measured: true };
}

/** Least squares over three and more tapes (DESIGN: sketching by tape), from the crossing on the side that is said. */
export function placeOfManyTapes(
  tapes: readonly TapeCircle[],
  side: Side,
  sigma: number,
  { say, names }: TapeReport,
): TapedPlace {
  const start = startOf(tapes, side);
  const observations: Observation[] = tapes.map(({ radius, centre }, i) => ({
    kind: 'distance',
    id: String(i),
    from: { fixed: centre },
    to: { at: 0 },
    value: radius,
    sigma,
  }));
  const fit = adjust({ estimates: [start.x, start.y], observations });
  if (fit.status === 'singular') {
    say('tapes-one-way', 'error', { axis: null });
    return { at: start, measured: false };
  }
  if (fit.status !== 'converged') {
    say('tapes-not-converged', 'error', { a: names(0) });
    return { at: start, measured: false };
  }
  const at = { x: fit.estimates[0] ?? start.x, y: fit.estimates[1] ?? start.y };
  const tapeResiduals = tapes.map(({ radius, centre }) => radius - distance(centre, at));
  const test = fit.globalTest;
  if (test !== null && test.statistic > test.upper) {
    const misfits = fit.standardizedResiduals.map(Math.abs);
    const worst = misfits.indexOf(Math.max(...misfits));
    say('tapes-disagree', 'warning', { worst: names(worst), by: tapeResiduals[worst] ?? 0 });
  }
  const axis = errorEllipse(fit.covarianceBlock(0)).semiMajor;
  // as unsure as two tapes that cut too weakly
  if (axis > worstAxis(Math.sin(settings.weakCutBelow.value), sigma, sigma))
    say('tapes-one-way', 'warning', { axis });
  return { at, measured: true, tapeResiduals };
}

/**
 * Where least squares start: the crossing of the first two tapes on the side that is said, when they cut well. Else that of the two
 * that cut best, of its two places the one that all tapes fit better, and on the said side of the first two where they tell no
 * difference. Without two that meet, where the first two come nearest to each other.
 */
function startOf(tapes: readonly TapeCircle[], side: Side): Point {
  const [a, b] = tapes as readonly [TapeCircle, TapeCircle, ...TapeCircle[]]; // three and more
  const first = intersectCircles(a.centre, a.radius, b.centre, b.radius);
  if (first.ok && !isWeak(first.value.cutAngle)) return first.value.points[side === 'left' ? 0 : 1];
  const best = bestCrossing(tapes);
  if (best === null) return closestApproach(a.centre, a.radius, b.centre, b.radius);
  const [one, other] = best;
  const difference = misfit(tapes, one) - misfit(tapes, other);
  if (Math.abs(difference) > SAME_MISFIT_M2) return difference < 0 ? one : other;
  return sideOf(one, a.centre, b.centre) === side ? one : other;
}

/** The two places of the pair of tapes that meet most squarely; null when no two meet. */
function bestCrossing(tapes: readonly TapeCircle[]): readonly [Point, Point] | null {
  let best: { points: readonly [Point, Point]; sine: number } | null = null;
  for (const [i, a] of tapes.entries()) {
    for (const b of tapes.slice(i + 1)) {
      const crossing = intersectCircles(a.centre, a.radius, b.centre, b.radius);
      if (!crossing.ok) continue;
      const sine = Math.sin(crossing.value.cutAngle);
      if (best === null || sine > best.sine) best = { points: crossing.value.points, sine };
    }
  }
  return best?.points ?? null;
}

/** Sum of the squared misfits (m²) of all tapes at a place. */
function misfit(tapes: readonly TapeCircle[], at: Point): number {
  return tapes.reduce((sum, { centre, radius }) => sum + (radius - distance(centre, at)) ** 2, 0);
}

/** Tapes that cut flatter than this leave a point unsure along them. */
function isWeak(cut: number): boolean {
  return cut < settings.weakCutBelow.value || cut > settings.weakCutAbove.value;
}
