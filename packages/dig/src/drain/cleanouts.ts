import { locate, type Point, stationOf } from '@footmark/geometry';
import { type Derived, type DerivedPath, DRAWN_TURN_RAD, ruleValue, type Site } from '@footmark/site';
import type { Turn } from './turns';

/** Why a code asks for a cleanout: `head`: the upper end; `turn`: one sharp turn; `turns`: the sum since the one before; `spacing`. */
export type CleanoutReason = 'head' | 'turn' | 'turns' | 'spacing';

export type CleanoutAsked = {
  readonly station: number;
  readonly place: Point;
  readonly reason: CleanoutReason;
  /** The turn, or their sum (rad); null where turns are not what asks. */
  readonly turn: number | null;
  /** What stands there: a cleanout, a manhole, at the upper end a stack; null: it is missing. */
  readonly by: string | null;
};

/** Something that a pipe can be cleaned from, at a station of it (m). */
type Opening = { readonly feature: string; readonly station: number; readonly isStack: boolean };

/** Distances along the pipe are equal within this (m). */
const SAME_M = 1e-6;

/** Openings on a path with its flow: tied to one of its points, or within the site's reach of entries from it. */
function openingsOf(
  site: Site,
  { features }: Pick<Derived, 'features'>,
  on: DerivedPath,
): readonly Opening[] {
  const found: Opening[] = [];
  for (const { feature, points } of features.values()) {
    const isStack = feature.kind === 'stack';
    if (!isStack && feature.kind !== 'cleanout' && feature.kind !== 'manhole') continue;
    const [at] = points;
    if (at === undefined) continue;
    const { station, distance } = stationOf(on.line, at);
    if (distance > site.entryReach && !on.tiedTo.includes(feature.id)) continue;
    found.push({ feature: feature.id, station, isStack });
  }
  return found.sort((a, b) => a.station - b.station);
}

/** Every cleanout that the site's code asks for on a path, by station, and which of them are there. */
export function cleanoutsAsked(
  site: Site,
  derived: Pick<Derived, 'features' | 'paths'>,
  on: DerivedPath,
  turns: readonly Turn[],
): readonly CleanoutAsked[] {
  const openings = openingsOf(site, derived, on);
  const ways = openings.filter((o) => !o.isStack);
  const ask = (station: number, reason: CleanoutReason, turn: number | null, by: Opening | null) => ({
    station,
    place: locate(on.line, station).point,
    reason,
    turn,
    by: by?.feature ?? null,
  });
  const beside = ruleValue(site, 'cleanoutBeside');
  const at = (station: number): Opening | null => nearest(ways, station, beside);

  // a path that another flows into goes on from there
  const head = derived.paths.has(on.tiedTo[0] ?? '')
    ? []
    : [ask(0, 'head', null, at(0) ?? stackNear(site, openings))];
  const bySingle = singleTurns(site, turns).map((t) => ask(t.station, 'turn', t.turn, at(t.station)));
  const bySum = summedTurns(site, turns, ways, at).map(({ station, turn }) =>
    ask(station, 'turns', turn, at(station)),
  );
  const known = [...ways, ...bySingle, ...bySum].map((o) => o.station);
  const bySpacing = spaced(ruleValue(site, 'cleanoutSpacing'), on.length, known).map((station) =>
    ask(station, 'spacing', null, at(station)),
  );
  return [...head, ...bySingle, ...bySum, ...bySpacing].sort((a, b) => a.station - b.station);
}

/** What serves the upper end by the rule about stacks, which may know of none. */
function stackNear(site: Site, openings: readonly Opening[]): Opening | null {
  const within = ruleValue(site, 'cleanoutStack');
  return within > 0 ? nearest(openings, 0, within) : null;
}

function nearest(openings: readonly Opening[], station: number, within: number): Opening | null {
  let found: Opening | null = null;
  let best = within + SAME_M;
  for (const opening of openings) {
    const away = Math.abs(opening.station - station);
    if (away < best) [found, best] = [opening, away];
  }
  return found;
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

/** Stations that leave no more than the spacing between openings, from the upper end to the lower. */
function spaced(spacing: number, length: number, known: readonly number[]): readonly number[] {
  if (spacing <= 0) return [];
  const found: number[] = [];
  let last = 0;
  for (const next of [...known.filter((s) => s < length), length].sort((a, b) => a - b)) {
    while (next - last > spacing + SAME_M) {
      last += spacing;
      found.push(last);
    }
    last = Math.max(last, next);
  }
  return found;
}
