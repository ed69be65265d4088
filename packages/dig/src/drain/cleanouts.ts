import { locate, type Point } from '@footmark/geometry';
import {
  type Derived,
  type DerivedPath,
  DRAWN_TURN_RAD,
  NOMINAL_SHARE,
  type PathProfile,
  pipeSizeAt,
  ruleValue,
  type Site,
} from '@footmark/site';
import { nearestOpening, type Opening, openingsOf, SAME_M } from './openings';
import { spacedOpenings } from './spacedOpenings';
import type { Turn } from './turns';

/**
 * Why a code asks for a cleanout: `head`: the upper end; `junction`: where the building's drain becomes the sewer; `turn`: one sharp turn;
 * `turns`: the sum since the one before; `spacing`; `manhole`: the spacing of manholes on a large sewer.
 */
export type CleanoutReason = 'head' | 'junction' | 'turn' | 'turns' | 'spacing' | 'manhole';

export type CleanoutAsked = {
  readonly station: number;
  readonly place: Point;
  readonly reason: CleanoutReason;
  /** The turn, or their sum (rad); null where turns are not what asks. */
  readonly turn: number | null;
  /** What stands there: a cleanout, a manhole, at the upper end a stack; null: it is missing. */
  readonly by: string | null;
};

/** A cleanout and the size that is asked of it (m). */
export type NarrowCleanout = {
  readonly feature: string;
  readonly station: number;
  readonly place: Point;
  readonly diameter: number;
  readonly asked: number;
};

/** Every cleanout that the site's code asks for on a path, by station, and which of them are there. */
export function cleanoutsAsked(
  site: Site,
  derived: Pick<Derived, 'features' | 'paths'>,
  on: DerivedPath,
  profile: PathProfile,
  turns: readonly Turn[],
): readonly CleanoutAsked[] {
  const openings = openingsOf(site, derived, on);
  const ways = openings.filter((o) => o.is !== 'stack');
  const ask = (station: number, reason: CleanoutReason, turn: number | null, by: Opening | null) => ({
    station,
    place: locate(on.line, station).point,
    reason,
    turn,
    by: by?.feature ?? null,
  });
  const beside = ruleValue(site, 'cleanoutBeside');
  const at = (station: number): Opening | null => nearestOpening(ways, station, beside);

  const ends = upperEnds(site, derived, on, profile).map(({ station, reason, within }) =>
    ask(station, reason, null, nearestOpening(ways, station, within) ?? stackNear(site, openings, station)),
  );
  const bySingle = singleTurns(site, turns).map((t) => ask(t.station, 'turn', t.turn, at(t.station)));
  const bySum = summedTurns(site, turns, ways, at).map(({ station, turn }) =>
    ask(station, 'turns', turn, at(station)),
  );
  const asked = [...bySingle, ...bySum].map((a) => ({ station: a.station, is: 'cleanout' as const }));
  const bySpacing = spacedOpenings(site, on, [...ways, ...asked]).map(({ station, reason }) =>
    ask(station, reason, null, reason === 'manhole' ? null : at(station)),
  );
  return [...ends, ...bySingle, ...bySum, ...bySpacing].sort((a, b) => a.station - b.station);
}

type UpperEnd = { readonly station: number; readonly reason: 'head' | 'junction'; readonly within: number };

/**
 * Where a path begins, unless another flows in there, and where it leaves the building that it begins in: there the sewer begins. If that is
 * near by, one opening serves both.
 */
function upperEnds(
  site: Site,
  { paths }: Pick<Derived, 'paths'>,
  on: DerivedPath,
  { ground }: PathProfile,
): readonly UpperEnd[] {
  const near = ruleValue(site, 'cleanoutJunction');
  const out = ground.indoors.find(({ from }) => from <= SAME_M)?.to ?? null;
  const wall = out === null || out >= on.length - SAME_M ? null : out;
  const station = wall === null ? 0 : Math.min(on.length, wall + ruleValue(site, 'drainPastWall'));
  const junction: UpperEnd[] = wall === null ? [] : [{ station, reason: 'junction', within: near }];
  const isServed = wall !== null && station <= near + SAME_M;
  if (paths.has(on.tiedTo[0] ?? '') || isServed) return junction;
  return [{ station: 0, reason: 'head', within: ruleValue(site, 'cleanoutBeside') }, ...junction];
}

/** What serves there by the rule about stacks, which may know of none. */
function stackNear(site: Site, openings: readonly Opening[], station: number): Opening | null {
  const within = ruleValue(site, 'cleanoutStack');
  return within > 0 ? nearestOpening(openings, station, within) : null;
}

/** Cleanouts that are narrower than the pipe that they serve, and than what is enough for any. */
export function narrowCleanouts(
  site: Site,
  derived: Pick<Derived, 'features'>,
  on: DerivedPath,
): readonly NarrowCleanout[] {
  const enough = ruleValue(site, 'cleanoutSize');
  return openingsOf(site, derived, on).flatMap(({ feature, is, station, diameter }) => {
    const asked = Math.min(enough, pipeSizeAt(on.path.stretches, station).diameter);
    if (is !== 'cleanout' || diameter === null || diameter >= (1 - NOMINAL_SHARE) * asked) return [];
    return [{ feature, station, place: locate(on.line, station).point, diameter, asked }];
  });
}

/** Turns sharper than the limit; the first of those within the group's length serves the others. */
function singleTurns(site: Site, turns: readonly Turn[]): readonly Turn[] {
  const limit = ruleValue(site, 'cleanoutTurn') + DRAWN_TURN_RAD;
  const group = ruleValue(site, 'cleanoutTurnGroup') + SAME_M;
  const first: Turn[] = [];
  for (const turn of turns) {
    if (turn.turn <= limit) continue;
    const before = first.at(-1);
    if (before === undefined || turn.station - before.station > group) first.push(turn);
  }
  return first;
}

/** Where the turns since the last opening, there or asked for, come to more than the limit. */
function summedTurns(
  site: Site,
  turns: readonly Turn[],
  ways: readonly Opening[],
  at: (station: number) => Opening | null,
): readonly { readonly station: number; readonly turn: number }[] {
  const limit = ruleValue(site, 'cleanoutTurnSum');
  if (limit <= 0) return [];
  const found: { station: number; turn: number }[] = [];
  let [sum, from] = [0, 0];
  for (const { station, turn } of turns) {
    const passed = ways.some((o) => o.station > from + SAME_M && o.station < station - SAME_M);
    sum = passed ? turn : sum + turn;
    from = station;
    if (sum > limit + DRAWN_TURN_RAD) found.push({ station, turn: sum });
    if (sum > limit + DRAWN_TURN_RAD || at(station) !== null) sum = 0;
  }
  return found;
}
