import { type ClockRange, changeReading, type Reading, type Run } from '@footmark/site';
import { edit } from '../session/siteSession';

type Facts = Omit<Reading, 'id' | 'number'>;

/** Facts of a reading that become others; undefined: not given any more. */
export type FactsChange = { readonly [Key in keyof Facts]?: Facts[Key] | undefined };

/** Changes facts of a reading as one step of undo; false when that is refused. */
export function changeFacts(run: Run, reading: Reading, change: FactsChange): boolean {
  const facts = withoutAbsent({ ...reading, ...change });
  return edit(`Change reading ${run.letter}${reading.number}`, (s) =>
    changeReading(s, { run: run.id, id: reading.id, facts }),
  );
}

/** Absent is how a site says 'not given': an undefined value is a key too many. */
export function withoutAbsent<T extends object>(
  facts: {
    readonly [Key in keyof T]: T[Key] | undefined;
  },
): T {
  return Object.fromEntries(Object.entries(facts).filter(([, value]) => value !== undefined)) as T; // no value is undefined
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
