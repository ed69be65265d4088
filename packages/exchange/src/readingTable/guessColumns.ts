import type { ThingMatcher } from './matchThing';
import { clockOf, isLength } from './measureCell';
import type { TableColumns } from './readingTable';
import type { TableRecord } from './splitRecords';

/**
 * The columns of a table without a header, from what is in them: the column that names most things seen, the one column of
 * lengths to its left, then perhaps a clock, and the rest is the note. Rows numbered 1, 2, 3 are passed over. Where two
 * columns could be the counter, neither is taken: a reading at the wrong footage is worse than none.
 */
export function guessColumns(
  records: readonly TableRecord[],
  match: ThingMatcher,
): (TableColumns & Readonly<{ counter: number }>) | 'no-counter-column' | 'two-counter-columns' {
  const width = Math.max(...records.map(({ cells }) => cells.length));
  const table: readonly (readonly string[])[] = Array.from({ length: width }, (_, at) =>
    records.map(({ cells }) => cells[at] ?? ''),
  );
  const lengths = table.flatMap((cells, at) => (mostly(cells, isLength) ? [at] : []));

  const [first, second = -1] = lengths;
  const seen = columnOfThings(table, match) ?? (first === 0 && second !== 1 && width > 1 ? 1 : undefined);
  const left = lengths.filter((at) => at < (seen ?? width));
  const able = left.length > 0 ? left : lengths;
  const counter = able.length === 2 && isNumbering(table, able) ? able[1] : able[0];
  if (counter === undefined) return 'no-counter-column';
  if (able.length > 1 && counter === able[0]) return 'two-counter-columns';
  if (seen === undefined) return { counter };

  const after = Math.max(seen, counter) + 1;
  const isClock = mostly(table[after] ?? [], (text) => clockOf(text).ok);
  const note = isClock ? after + 1 : after;
  return { counter, seen, ...(isClock && { clock: after }), ...(note < width && { note }) };
}

/** The column, of those that are not taken, in which most cells name a thing seen; the left one of two; none: undefined. */
export function seenByContent(
  records: readonly TableRecord[],
  taken: ReadonlySet<number>,
  match: ThingMatcher,
): number | undefined {
  const width = Math.max(0, ...records.map(({ cells }) => cells.length));
  return columnOfThings(
    Array.from({ length: width }, (_, at) =>
      taken.has(at) ? [] : records.map(({ cells }) => cells[at] ?? ''),
    ),
    match,
  );
}

function columnOfThings(table: readonly (readonly string[])[], match: ThingMatcher): number | undefined {
  let best: number | undefined;
  let most = 0;
  for (const [at, cells] of table.entries()) {
    const named = cells.filter((text) => match(text) !== null).length;
    if (named > most) [best, most] = [at, named];
  }
  return best;
}

/** Whether at least half of the cells that are not blank, and one at least, are so. */
function mostly(cells: readonly string[], isSo: (text: string) => boolean): boolean {
  const filled = cells.filter((text) => text !== '');
  return filled.length > 0 && 2 * filled.filter(isSo).length >= filled.length;
}

/**
 * Whether the first of two columns counts the rows from 1. The other must have more than bare digits somewhere, or both could
 * be the halves of numbers cut at their decimal commas.
 */
function isNumbering(
  table: readonly (readonly string[])[],
  [numbers = 0, lengths = 1]: readonly number[],
): boolean {
  const counted = (table[numbers] ?? []).filter((text) => /^\d+$/.test(text));
  return (
    counted.length > 1 &&
    counted.every((text, i) => text === String(i + 1)) &&
    (table[lengths] ?? []).some((text) => isLength(text) && !/^\d+$/.test(text))
  );
}
