import type { Stretch } from '../document/path';
import type { SiteRules } from '../document/siteRules';
import { leastFall } from '../rules/leastFall';
import type { Rule } from '../rules/ruleOf';
import { WITHIN_95 } from '../rules/sigmas';
import { heightBetween, type ProfileDrop, type ProfilePoint } from './profilePoints';
import { stretchesBetween } from './stretchesBetween';

/**
 * What levels say of a slope against what is asked for: its 95 % range lies at or above that, below that, around it, or below level
 * altogether.
 */
export type SlopeVerdict = 'enough' | 'too-flat' | 'cannot-tell' | 'against-flow';

/** The slope of a pipe between two places whose inverts are known. Stations in plan metres, slopes as fall over run. */
export type ProfileSlope = {
  readonly from: number;
  readonly to: number;
  readonly slope: number;
  readonly sigma: number;
  /** The least that is asked for of the sizes between. */
  readonly least: Rule;
  readonly verdict: SlopeVerdict;
};

/** Of a path's slopes, what there is to say of them. */
export type DoubtfulSlopes = {
  readonly missed: readonly MissedSlope[];
  /** Of all that the levels leave open the surest, how many `others` there are, and whether the `whole`, from end to end, does fall enough. */
  readonly open: { readonly surest: ProfileSlope; readonly others: number; readonly whole: boolean } | null;
};

type MissedSlope = ProfileSlope & { readonly verdict: 'too-flat' | 'against-flow' };

/** Slopes that differ by less than this are the same: rounding, not a measurement. */
const SAME_SLOPE = 1e-9;

type Ruled = { readonly rules: SiteRules };

/** The slopes between neighbours, then, of three and more, from the first to the last. */
export function profileSlopes(
  site: Ruled,
  points: readonly ProfilePoint[],
  drops: readonly ProfileDrop[],
  stretches: readonly Stretch[],
): { readonly slopes: readonly ProfileSlope[]; readonly whole: ProfileSlope | null } {
  const slopes = points.slice(1).flatMap((b, i) => {
    const a = points[i];
    return a === undefined ? [] : [slopeBetween(site, a, b, drops, stretches)];
  });
  const [first, last] = [points[0], points.at(-1)];
  const whole =
    first === undefined || last === undefined || slopes.length < 2
      ? (slopes[0] ?? null)
      : slopeBetween(site, first, last, drops, stretches);
  return { slopes, whole };
}

/** σ of a slope between two independent levels: √(σ₁² + σ₂²) over the plan distance. */
function slopeBetween(
  site: Ruled,
  a: ProfilePoint,
  b: ProfilePoint,
  drops: readonly ProfileDrop[],
  stretches: readonly Stretch[],
): ProfileSlope {
  const plan = b.station - a.station;
  const fall = a.invert - b.invert - heightBetween(drops, a.station, b.station);
  const [slope, sigma] = [fall / plan, Math.hypot(a.sigma, b.sigma) / plan];
  const least = strictest(site, stretches, a.station, b.station);
  return {
    from: a.station,
    to: b.station,
    slope,
    sigma,
    least,
    verdict: slopeVerdict(slope, sigma, least.value),
  };
}

export function slopeVerdict(slope: number, sigma: number, least: number): SlopeVerdict {
  const reach = WITHIN_95 * sigma;
  if (slope + reach < -SAME_SLOPE) return 'against-flow';
  if (slope + reach < least - SAME_SLOPE) return 'too-flat';
  return slope - reach >= least - SAME_SLOPE ? 'enough' : 'cannot-tell';
}

export function doubtfulSlopes({
  slopes,
  whole,
}: {
  readonly slopes: readonly ProfileSlope[];
  readonly whole: ProfileSlope | null;
}): DoubtfulSlopes {
  const missed = slopes.filter(
    (s): s is MissedSlope => s.verdict === 'too-flat' || s.verdict === 'against-flow',
  );
  const open = slopes.filter((s) => s.verdict === 'cannot-tell');
  const [surest] = open.toSorted((a, b) => a.sigma - b.sigma);
  if (surest === undefined) return { missed, open: null };
  return { missed, open: { surest, others: open.length - 1, whole: whole?.verdict === 'enough' } };
}

function strictest(site: Ruled, stretches: readonly Stretch[], from: number, to: number): Rule {
  const rules = stretchesBetween(stretches, from, to).map((s) => leastFall(site, s.diameter));
  return rules.reduce((a, b) => (b.value > a.value ? b : a), rules[0] ?? leastFall(site, 0));
}
