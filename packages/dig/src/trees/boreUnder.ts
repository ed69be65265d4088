import {
  boreDistances,
  type PathProfile,
  profileAt,
  type RuleName,
  ruleValue,
  type SiteRules,
} from '@footmark/site';

/** Trunk sizes of a table are met within this (m): inches that became metres and back. */
const ROUNDING_M = 1e-6;

/** The row that tells how far from the face of a trunk (diameter in metres) boring takes the place of trenching. */
export function boreDistanceRule(diameter: number): RuleName {
  const found = boreDistances.find(({ upTo }) => diameter <= upTo + ROUNDING_M);
  return found?.rule ?? 'boreOver19';
}

/** Whether a pipe may be bored under a tree's roots: how deep published practice asks, and how deep the pipe lies. */
export type BoreUnder = {
  /** From the ground to the top of the bore (m), and the row that asks. */
  readonly asked: number;
  readonly row: RuleName;
  /** Least cover of the pipe there (m); null where it is not known. */
  readonly cover: number | null;
  /** Null where the cover is not known. */
  readonly enough: boolean | null;
};

/** `distance` (m): pipe wall to trunk face. `cover` (m): of the pipe beside the tree. */
export function boreUnder(
  site: { readonly rules: SiteRules },
  tree: { readonly diameter: number },
  distance: number,
  cover: number | null,
): BoreUnder {
  const small = tree.diameter <= ruleValue(site, 'boreSmallTrunk') + ROUNDING_M;
  const near = ruleValue(site, small ? 'boreNearSmall' : 'boreNearLarge');
  const [usual, deeper] = [ruleValue(site, 'boreDepth'), ruleValue(site, 'boreDepthNear')];
  const row = distance <= near + ROUNDING_M && deeper > usual ? 'boreDepthNear' : 'boreDepth';
  const asked = ruleValue(site, row);
  return { asked, row, cover, enough: cover === null ? null : cover >= asked - ROUNDING_M };
}

/** The least cover of a pipe between two stations (m); null where any of it is not known. */
export function leastCover(profile: PathProfile | undefined, from: number, to: number): number | null {
  if (profile === undefined) return null;
  const turns = [
    ...profile.line.grades,
    ...profile.ground.marks,
    ...profile.line.stretches.map((s) => ({ station: s.from })),
  ];
  const stations = [from, ...turns.map((t) => t.station).filter((s) => s > from && s < to), to].sort(
    (a, b) => a - b,
  );
  let least = Infinity;
  for (const [i, station] of stations.entries()) {
    const next = stations[i + 1] ?? station;
    for (const [at, side] of [
      [station, 'before'],
      [station, 'after'],
      [(station + next) / 2, 'after'],
    ] as const) {
      const cover = profileAt(profile, at, side).cover;
      if (cover === null) return null;
      least = Math.min(least, cover.depth);
    }
  }
  return least;
}
