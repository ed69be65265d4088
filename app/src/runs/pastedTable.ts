import { parseReadingTable, type ReadingRow, type ReadingTable, type TableProblem } from '@footmark/exchange';
import {
  nextReadingNumber,
  type ObservationKind,
  type Reading,
  type Run,
  withoutAbsent,
} from '@footmark/site';
import { words } from '../words';
import { clockOf } from './readingFacts';

/** One row of the text: the reading that it tells, if it does, and what is the matter with it. */
export type PastedLine = {
  readonly line: number;
  readonly row: ReadingRow | null;
  readonly problems: readonly TableProblem[];
  /** What the table says was seen, where that is none of the things a reading can have seen; null where it is. */
  readonly unknown: string | null;
};

export type PastedTable = {
  readonly lines: readonly PastedLine[];
  /** What is the matter with the whole text. */
  readonly whole: readonly TableProblem[];
  readonly unread: ReadingTable['unread'];
  /** Bare numbers of the counter have no unit in the text. */
  readonly asksUnit: boolean;
};

const OF_THE_WHOLE: ReadonlySet<string> = new Set([
  'text-too-long',
  'no-rows',
  'no-counter-column',
  'two-counter-columns',
]);

let last: { readonly text: string; readonly unit: 'ft' | 'm'; readonly table: PastedTable } | null = null;

/** Pasted text as a table, bare numbers of the counter in `unit`. What asks whether a text is one leaves it read for the leaf that shows it. */
export function pastedTable(text: string, unit: 'ft' | 'm'): PastedTable {
  if (last?.text !== text || last.unit !== unit) last = { text, unit, table: readPasted(text, unit) };
  return last.table;
}

function readPasted(text: string, unit: 'ft' | 'm'): PastedTable {
  const table = parseReadingTable(text, { unit, names: words.observationName });
  const problems = new Map<number, TableProblem[]>();
  for (const problem of table.problems) {
    if (!OF_THE_WHOLE.has(problem.code))
      problems.set(problem.line, [...(problems.get(problem.line) ?? []), problem]);
  }
  const rows = new Map(table.rows.map((row) => [row.line, row]));
  const numbers = [...new Set([...rows.keys(), ...problems.keys()])].sort((a, b) => a - b);
  return {
    lines: numbers.map((line) => {
      const row = rows.get(line) ?? null;
      const own = problems.get(line) ?? [];
      const named = own.find((p) => p.code === 'unknown-thing-seen')?.text ?? '';
      return { line, row, problems: own, unknown: row?.seen === null ? named : null };
    }),
    whole: table.problems.filter((p) => OF_THE_WHOLE.has(p.code)),
    unread: table.unread,
    asksUnit: table.unitIsAssumed,
  };
}

/** Whether a text holds readings at all. */
export function isReadingTable(text: string, unit: 'ft' | 'm'): boolean {
  return pastedTable(text, unit).lines.some((l) => l.row !== null);
}

/** What people said an unknown word of the table means; absent: nothing yet. */
export type SaidToMean = Readonly<Record<string, ObservationKind>>;

export type PastedReading = { readonly line: number; readonly reading: Reading };

/** The readings that lines lead to, numbered on from those of the run; lines of which nobody knows what was seen are left out. */
export function pastedReadings(
  lines: readonly PastedLine[],
  means: SaidToMean,
  run: Run,
  newId: () => string,
): readonly PastedReading[] {
  let number = nextReadingNumber(run);
  return lines.flatMap(({ line, row, unknown }) => {
    const seen = row?.seen ?? (unknown === null ? undefined : means[unknown]);
    if (row === null || seen === undefined) return [];
    const { counter, to, passed, note, videoAt } = row;
    const reading = withoutAbsent<Reading>({
      ...{ id: newId(), number, counter, to, seen, passed, note, videoAt },
      clock: row.clock === undefined ? undefined : clockOf(row.clock),
    });
    number += 1;
    return [{ line, reading }];
  });
}

/** Counts this close (m) are one: a counter shows no finer. */
const SAME_COUNT_M = 0.001;

/** How many of the readings the run has already, by counter and thing seen. */
export function alreadyThere(readings: readonly Reading[], run: Run): number {
  const key = (r: Reading) => `${Math.round(r.counter / SAME_COUNT_M)} ${r.seen}`;
  const known = new Set(run.readings.map(key));
  return readings.filter((r) => known.has(key(r))).length;
}
