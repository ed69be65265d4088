import type { Site } from '../document/site';
import { sigmaOf } from '../rules/sigmaOf';
import { alongSigma } from './alongSigma';
import type { Mark, MarkPlace } from './marks';
import { type Candidate, orderedMatch } from './orderedMatch';
import { repairedBetween } from './repairedBetween';
import { type SameThings, sameThings } from './sameThings';

/**
 * Two readings of different runs that could be one thing. `closure`: plan metres from where the first has it to where the second does,
 * with the flow; `sigma`: its standard deviation (m).
 */
export type PairSuggestion = {
  readonly a: Mark;
  readonly b: Mark;
  readonly closure: number;
  readonly sigma: number;
};

/** Metres that two sights of one thing may be apart, besides what counters, zeros, scales and risers do to them. */
const SEARCH_M = 0.5;

/** As many standard deviations of that come on top: nearly all that is one thing. */
const SEARCH_SIGMAS = 3;

type Placed = Mark & { readonly place: MarkPlace };

/** A run's things on one path, with the flow. */
type Row = {
  readonly run: string;
  readonly visit: string | null;
  readonly path: string;
  readonly marks: readonly Placed[];
};

/** How far apart (m) two sights of one thing are looked for. `sigma`: standard deviation (m) of their distance. */
export function searchDistance(sigma: number): number {
  return SEARCH_M + SEARCH_SIGMAS * sigma;
}

/**
 * Readings that could be paired: of one kind on one path, near each other, from two runs between which nothing was repaired, and not
 * known to be one thing with another reading of that run, nor to be two. Things keep their order along a pipe, so no two suggestions for two runs
 * cross, nor do they cross what is paired. Each thing is in one suggestion at the most. Nearest first.
 */
export function pairSuggestions(site: Site, marks: readonly Mark[]): readonly PairSuggestion[] {
  const rows = rowsOf(marks);
  const things = sameThings(site.pairs);
  const found = rows.flatMap((first, i) =>
    rows
      .slice(i + 1)
      .filter((second) => second.run !== first.run && second.path === first.path)
      .filter((second) => !repairedBetween(site, first.visit, second.visit))
      .flatMap((second) => matched(site, first, second, things)),
  );
  const used = new Set<string>();
  return found
    .sort((p, q) => Math.abs(p.closure) - Math.abs(q.closure))
    .filter(({ a, b }) => {
      const keys = [things.key(a.reading.id), things.key(b.reading.id)];
      if (keys.some((key) => used.has(key))) return false;
      for (const key of keys) used.add(key);
      return true;
    });
}

function rowsOf(marks: readonly Mark[]): readonly Row[] {
  const rows = new Map<string, Row & { readonly marks: Placed[] }>();
  for (const mark of marks) {
    if (!isThing(mark)) continue;
    const { run, place } = mark;
    const key = `${run.id}/${place.path}`;
    const row = rows.get(key) ?? { run: run.id, visit: run.visit, path: place.path, marks: [] };
    row.marks.push(mark);
    rows.set(key, row);
  }
  for (const row of rows.values()) row.marks.sort((a, b) => a.place.station - b.place.station);
  return [...rows.values()];
}

/** The end of a run is about the run, and water stands where it stands: neither is a thing to be seen again. */
function isThing(mark: Mark): mark is Placed {
  return mark.place !== null && mark.reading.seen !== 'end-of-run' && mark.reading.seen !== 'water-level';
}

function matched(site: Site, first: Row, second: Row, things: SameThings): readonly PairSuggestion[] {
  const paired = pairedStations(first, second, things);
  const different = new Set(
    site.different.flatMap(({ a, b }) => [`${a.reading}/${b.reading}`, `${b.reading}/${a.reading}`]),
  );
  const candidates = candidatesOf(site, first, second).filter(
    ({ a, b }) =>
      !different.has(`${a.reading.id}/${b.reading.id}`) &&
      !isKnownIn(second, a, things) &&
      !isKnownIn(first, b, things) &&
      paired.every(([p, q]) => (a.place.station - p) * (b.place.station - q) >= 0),
  );
  return orderedMatch(candidates).map(({ a, b, closure, sigma }) => ({ a, b, closure, sigma }));
}

type Near = PairSuggestion & Candidate & { readonly a: Placed; readonly b: Placed };

function candidatesOf(site: Site, first: Row, second: Row): readonly Near[] {
  const [sigmas, others] = [first, second].map((row) => row.marks.map((m) => alongSigma(site, m)));
  const look = sigmaOf(site, 'sameThing');
  const widest = (of: readonly number[] = []) => of.reduce((most, sigma) => Math.max(most, sigma), 0);
  const window = searchDistance(Math.hypot(widest(sigmas), widest(others), look));
  const found: Near[] = [];
  let low = 0;
  for (const [i, a] of first.marks.entries()) {
    while ((second.marks[low]?.place.station ?? Infinity) < a.place.station - window) low += 1;
    for (let j = low; j < second.marks.length; j++) {
      const b = second.marks[j];
      const closure = (b?.place.station ?? Infinity) - a.place.station;
      if (b === undefined || closure > window) break;
      if (a.reading.seen !== b.reading.seen || !lookAlike(a, b)) continue;
      const sigma = Math.hypot(sigmas?.[i] ?? 0, others?.[j] ?? 0, look);
      const share = Math.abs(closure) / searchDistance(sigma);
      if (share < 1) found.push({ a, b, i, j, closure, sigma, gain: 1 - share * share });
    }
  }
  return found;
}

/** From the other side something that goes on begins where it ends from this one. */
function lookAlike(a: Mark, b: Mark): boolean {
  return a.run.direction === b.run.direction || (a.reading.to === undefined && b.reading.to === undefined);
}

/** Whether a reading is known to be one thing with a reading of the row's run. */
function isKnownIn(row: Row, { reading }: Mark, things: SameThings): boolean {
  return things.of(reading.id).some(({ run }) => run === row.run);
}

/** Stations, in the first row and in the second, of what is known to be one thing. */
function pairedStations(first: Row, second: Row, things: SameThings): readonly (readonly [number, number])[] {
  return first.marks.flatMap((a) => {
    const known = things.of(a.reading.id).find(({ run }) => run === second.run);
    const b = second.marks.find((mark) => mark.reading.id === known?.reading);
    return b === undefined ? [] : [[a.place.station, b.place.station] as const];
  });
}
