import { ellipseFactor95 } from '@footmark/adjust';
import { NEGLIGIBLE_LENGTH_M, type Point } from '@footmark/geometry';

/**
 * How a 95 % accuracy was got (FGDC-STD-007.3-1998, appendix 3-A; from memory). `equal`: both axes alike, 1.7308·RMSE_r. `mean`: the
 * smaller RMSE is 0.6 of the larger or more, 2.4477 times their mean. `larger`: it is less, for which the standard has no formula
 * and the mean would promise too much; 2.4477 times the larger RMSE is never too little.
 */
export type AccuracyRule = 'equal' | 'mean' | 'larger';

/** A place that was found beside where the computation has it, and whether the computation was fitted to it. */
export type CheckPoint = { readonly found: Point; readonly computed: Point; readonly weighed: boolean };

/** How good the computation is on this site: computed places against where a receiver or a crew found them. Metres. */
export type SiteAccuracy = {
  /** Check points that it rests on, at least 1. */
  readonly count: number;
  /** Root mean square of what they are off along the site's x and y, and of the distances. */
  readonly rmseX: number;
  readonly rmseY: number;
  readonly rmse: number;
  /** Radius within which 95 % lie, were the errors normal about 0. */
  readonly accuracy: number;
  readonly rule: AccuracyRule;
  /** The smaller RMSE of the two axes over the larger, 0 to 1; 1 when nothing is off. */
  readonly ratio: number;
  /** There are the 20 check points that the standard asks for. */
  readonly enough: boolean;
  /** None of the check points had a part in the fit that stands: a check that was fitted to is none. */
  readonly independent: boolean;
};

/** The standard's least count of check points (its 3.2.2). */
const ENOUGH_POINTS = 20;

/** Under this ratio of the two RMSE the standard's mean does not hold. */
const LEAST_RATIO = 0.6;

/** A ratio this close to 1 is rounding: there both of the standard's formulas say the same. */
const RATIO_ROUNDING = 1e-9;

/** Null without check points. */
export function accuracyOf(checks: readonly CheckPoint[]): SiteAccuracy | null {
  if (checks.length === 0) return null;
  const mean = (values: readonly number[]) => values.reduce((sum, v) => sum + v, 0) / values.length;
  const rmseX = Math.sqrt(mean(checks.map((l) => (l.found.x - l.computed.x) ** 2)));
  const rmseY = Math.sqrt(mean(checks.map((l) => (l.found.y - l.computed.y) ** 2)));
  const larger = Math.max(rmseX, rmseY);
  const ratio = larger < NEGLIGIBLE_LENGTH_M ? 1 : Math.min(rmseX, rmseY) / larger;
  const rule = ratio > 1 - RATIO_ROUNDING ? 'equal' : ratio >= LEAST_RATIO ? 'mean' : 'larger';
  const rmse = Math.hypot(rmseX, rmseY);
  return {
    count: checks.length,
    rmseX,
    rmseY,
    rmse,
    accuracy: accuracyBy(rule, rmseX, rmseY),
    rule,
    ratio,
    enough: checks.length >= ENOUGH_POINTS,
    independent: checks.every((l) => !l.weighed),
  };
}

function accuracyBy(rule: AccuracyRule, rmseX: number, rmseY: number): number {
  switch (rule) {
    case 'equal':
      return (ellipseFactor95 / Math.SQRT2) * Math.hypot(rmseX, rmseY);
    case 'mean':
      return (ellipseFactor95 * (rmseX + rmseY)) / 2;
    case 'larger':
      return ellipseFactor95 * Math.max(rmseX, rmseY);
  }
}
