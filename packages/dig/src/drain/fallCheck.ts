import {
  type DerivedPath,
  type DoubtfulSlopes,
  doubtfulSlopes,
  leastFall,
  type PathProfile,
  type ProfileSlope,
  type Rule,
  type Site,
  type SlopeVerdict,
  slopeVerdict,
  stretchesBetween,
} from '@footmark/site';

/** What is asked of one size of pipe between two stations (m). `slope`, as it is said, and `least` are fall over run, `fall` what that comes to (m). */
export type FallAsked = {
  readonly from: number;
  readonly to: number;
  readonly diameter: number;
  readonly slope: number;
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

/** A slope that is said of a stretch and is less than is asked, where no two levels tell. */
export type FallSaid = {
  readonly from: number;
  readonly to: number;
  readonly slope: number;
  readonly least: Rule;
};

export type FallCheck = {
  readonly asked: readonly FallAsked[];
  /** Over the whole path (m). */
  readonly required: number;
  /** Null where fewer than two levels of the pipe are known. */
  readonly available: FallAvailable | null;
  /** Between neighbouring known places. */
  readonly slopes: readonly ProfileSlope[];
  /** Those of which something is to be said. */
  readonly doubtful: DoubtfulSlopes;
  /** Said too flat, before the first known place and past the last. */
  readonly said: readonly FallSaid[];
};

/** The residential code calls 1/4 inch in 12 "2 percent": a slope that is said as the rounded one, short by no more than this share, meets. */
export const ROUNDED_SHARE = 0.05;

/** Pieces of pipe shorter than this (m) tell nothing of their own. */
const SHORTEST_M = 0.3;

/** What a path has to fall by the sizes of its stretches, against what its levels say. */
export function fallCheck(site: Site, { path, length }: DerivedPath, profile: PathProfile): FallCheck {
  const asked = stretchesBetween(path.stretches, 0, length).map(
    ({ from, to, diameter, slope }): FallAsked => {
      const least = leastFall(site, diameter);
      return { from, to, diameter, slope, least, fall: least.value * (to - from) };
    },
  );
  return {
    asked,
    required: requiredBetween(asked, 0, length),
    available: availableFall(asked, profile.whole),
    slopes: profile.slopes,
    doubtful: doubtfulSlopes(profile),
    said: asked.flatMap((stretch) => saidTooFlat(stretch, profile.whole)),
  };
}

function saidTooFlat(
  { from, to, slope, least }: FallAsked,
  levelled: ProfileSlope | null,
): readonly FallSaid[] {
  if (slope >= (1 - ROUNDED_SHARE) * least.value) return [];
  const pieces =
    levelled === null
      ? [[from, to]]
      : [
          [from, Math.min(to, levelled.from)],
          [Math.max(from, levelled.to), to],
        ];
  return pieces.flatMap(([a = 0, b = 0]) => (b - a > SHORTEST_M ? [{ from: a, to: b, slope, least }] : []));
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
