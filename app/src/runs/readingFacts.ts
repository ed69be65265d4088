import { type ClockRange, changeReading, type Reading, type ReadingFacts, type Run } from '@footmark/site';
import { currentSite, edit } from '../session/siteSession';

/** Changes facts of a reading as one step of undo; undefined clears one. False when that is refused. */
export function changeFacts(run: Run, reading: Reading, facts: ReadingFacts): boolean {
  return changeFactsAs(`Change reading ${run.letter}${reading.number}`, run, reading, facts);
}

/** The same under another name for the history. Facts that come late, as a photo does, for a reading that is gone are dropped. */
export function changeFactsAs(
  name: string,
  { id: run }: Pick<Run, 'id'>,
  { id }: Pick<Reading, 'id'>,
  facts: ReadingFacts,
): boolean {
  const isThere = currentSite()
    .runs.find((r) => r.id === run)
    ?.readings.some((r) => r.id === id);
  return isThere === true && edit(name, (s) => changeReading(s, { run, id, facts }));
}

/** A reading's clock as the site keeps it: one hour, or a range. */
export function clockOf(range: ClockRange): NonNullable<Reading['clock']> {
  return range.from === range.to ? { from: range.from } : { from: range.from, to: range.to };
}

/** A clock as one types it. */
export function clockInputText(clock: Reading['clock']): string {
  if (clock === undefined) return '';
  return clock.to === undefined ? String(clock.from) : `${clock.from}-${clock.to}`;
}
