import { locate, type Point } from '@footmark/geometry';
import {
  type DerivedPath,
  type PathProfile,
  profileAt,
  profileRules,
  ruleValue,
  type Site,
  WITHIN_95,
} from '@footmark/site';

/** From the ground to the outside top of the pipe at a station (m). */
export type CoverAt = {
  readonly station: number;
  readonly place: Point;
  readonly cover: number;
  readonly sigma: number;
};

export type CoverUnknown = 'no-pipe-level' | 'no-ground' | 'indoors';

/** The cover, or why it is not known. */
export type CoverEnd = CoverAt | { readonly station: number; readonly because: CoverUnknown };

/** `sure`: the 95 % range of the least cover lies wholly on that side. `not-known`: it meets where it is known, which is not all along. */
export type CoverVerdict = {
  readonly asked: number;
  readonly verdict: 'meets' | 'misses' | 'not-known';
  readonly sure: boolean;
};

export type CoverCheck = {
  readonly head: CoverEnd;
  readonly end: CoverEnd;
  /** Out of doors; null where none is known. */
  readonly least: CoverAt | null;
  /** Stations (m) out of doors between which it is not known. */
  readonly gaps: readonly {
    readonly from: number;
    readonly to: number;
    readonly because: Exclude<CoverUnknown, 'indoors'>;
  }[];
  /** No level of the ground is known: it is taken as even between the places where depths were measured. */
  readonly evenGround: boolean;
  readonly leastCover: CoverVerdict;
  /** Null where nobody has said how deep frost goes. */
  readonly frost: CoverVerdict | null;
};

/** Pieces of pipe shorter than this (m) tell nothing of their own. */
const PIECE_M = 1e-6;

export function coverCheck(site: Site, on: DerivedPath, profile: PathProfile): CoverCheck {
  const gaps: { from: number; to: number; because: 'no-pipe-level' | 'no-ground' }[] = [];
  let least: CoverAt | null = null;
  const stations = turningStations(profile);
  for (const [i, to] of stations.entries()) {
    const from = stations[i - 1];
    if (from === undefined || to - from < PIECE_M) continue;
    const because = unknownAt(profile, (from + to) / 2);
    if (because === 'indoors') continue;
    if (because !== null) {
      const before = gaps.at(-1);
      if (before !== undefined && before.to === from && before.because === because) before.to = to;
      else gaps.push({ from, to, because });
      continue;
    }
    // inside the piece: what is known at its very ends may be that of the next
    for (const [station, inside] of [
      [from, from + PIECE_M / 4],
      [to, to - PIECE_M / 4],
    ] as const) {
      const found = coverAt(on, profile, station, inside);
      if (found !== null && (least === null || found.cover < least.cover - PIECE_M)) least = found;
    }
  }
  const judge = (asked: number) => verdictOn(least, gaps.length > 0, asked);
  const frost = ruleValue(site, 'frostDepth');
  return {
    head: endOf(on, profile, 0),
    end: endOf(on, profile, on.length),
    least,
    gaps,
    evenGround: profile.ground.even,
    leastCover: judge(ruleValue(site, 'leastCover')),
    frost: frost > 0 ? judge(frost) : null,
  };
}

function verdictOn(least: CoverAt | null, isPartial: boolean, asked: number): CoverVerdict {
  if (least === null) return { asked, verdict: 'not-known', sure: false };
  const { cover, sigma } = least;
  const misses = cover < asked - PIECE_M;
  const sure = Math.abs(cover - asked) >= WITHIN_95 * sigma;
  if (misses) return { asked, verdict: 'misses', sure };
  return { asked, verdict: isPartial ? 'not-known' : 'meets', sure: sure && !isPartial };
}

/** Between these the cover changes evenly, or is not known at all. */
function turningStations({ ground, line, drops, length }: PathProfile): readonly number[] {
  const reach = profileRules.groundReach.value;
  const all = [
    0,
    length,
    ...ground.marks.flatMap((m) => [m.station - reach, m.station, m.station + reach]),
    ...ground.marks.slice(1).map((m, i) => (m.station + (ground.marks[i]?.station ?? m.station)) / 2),
    ...ground.indoors.flatMap((i) => [i.from, i.to]),
    ...line.grades.map((p) => p.station),
    ...line.stretches.map((s) => s.from),
    ...drops.map((d) => d.station),
  ];
  return [...new Set(all)].filter((s) => s >= 0 && s <= length).sort((a, b) => a - b);
}

function unknownAt(profile: PathProfile, station: number): CoverUnknown | null {
  if (profile.ground.indoors.some((i) => station > i.from && station < i.to)) return 'indoors';
  const { ground, pipe } = profileAt(profile, station);
  if (pipe === null) return 'no-pipe-level';
  return ground === null ? 'no-ground' : null;
}

/** `inside`: where it is looked up. */
function coverAt(on: DerivedPath, profile: PathProfile, station: number, inside: number): CoverAt | null {
  const { cover } = profileAt(profile, inside);
  if (cover === null) return null;
  return { station, place: locate(on.line, station).point, cover: cover.depth, sigma: cover.sigma };
}

/** At an end that is indoors there is no ground, though the wall of the house passes for its edge. */
function endOf(on: DerivedPath, profile: PathProfile, station: number): CoverEnd {
  const within = Math.min(Math.max(station, PIECE_M), on.length - PIECE_M);
  const because = unknownAt(profile, within);
  if (because !== null) return { station, because };
  return coverAt(on, profile, station, within) ?? { station, because: 'no-ground' };
}
