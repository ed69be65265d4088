import {
  type DerivedPath,
  leastFall,
  type PathProfile,
  type ProfileSlope,
  type Rule,
  type Site,
  type SlopeVerdict,
  slopeVerdict,
} from '@footmark/site';

/** What is asked of one size of pipe between two stations (m). `least` is fall over run, `fall` what that comes to (m). */
export type FallAsked = {
  readonly from: number;
  readonly to: number;
  readonly diameter: number;
  readonly least: Rule;
  readonly fall: number;
};

/** Between the first and the last place whose level is known: what there is to fall, drops apart, and what is asked (m). */
export type FallAvailable = {
  readonly from: number;
  readonly to: number;
  readonly available: number;
  readonly sigma: number;
  readonly required: number;
  readonly verdict: SlopeVerdict;
};

export type FallCheck = {
  readonly asked: readonly FallAsked[];
  /** Over the whole path (m). */
  readonly required: number;
  /** Null where fewer than two levels of the pipe are known. */
  readonly available: FallAvailable | null;
  /** Between neighbouring known places. */
  readonly slopes: readonly ProfileSlope[];
};

/** What a path has to fall by the sizes of its stretches, against what its levels say. */
export function fallCheck(site: Site, { path, length }: DerivedPath, profile: PathProfile): FallCheck {
  const { stretches } = path;
  const asked = stretches.flatMap(({ from, diameter }, i): FallAsked[] => {
    const to = Math.min(length, stretches[i + 1]?.from ?? length);
    if (to <= from) return [];
    const least = leastFall(site, diameter);
    return [{ from, to, diameter, least, fall: least.value * (to - from) }];
  });
  return {
    asked,
    required: requiredBetween(asked, 0, length),
    available: availableFall(asked, profile.whole),
    slopes: profile.slopes,
  };
}

function availableFall(asked: readonly FallAsked[], whole: ProfileSlope | null): FallAvailable | null {
  if (whole === null) return null;
  const { from, to, slope, sigma } = whole;
  const run = to - from;
  const required = requiredBetween(asked, from, to);
  return {
    from,
    to,
    available: slope * run,
    sigma: sigma * run,
    required,
    verdict: slopeVerdict(slope, sigma, required / run),
  };
}

function requiredBetween(asked: readonly FallAsked[], low: number, high: number): number {
  return asked.reduce(
    (sum, { from, to, least }) => sum + least.value * Math.max(0, Math.min(to, high) - Math.max(from, low)),
    0,
  );
}
