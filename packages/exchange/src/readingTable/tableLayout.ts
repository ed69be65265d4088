import type { LengthStyle } from '@footmark/site';
import { headingOf, matchHeadings, styleUnder } from './columnWords';
import { guessColumns, seenByContent } from './guessColumns';
import type { ThingMatcher } from './matchThing';
import { isLength } from './measureCell';
import type { TableColumns } from './readingTable';
import type { TableRecord } from './splitRecords';
import { HEADER_WITHIN_ROWS } from './tableLimits';

/** Where each thing stands, and how it is written there. `seen` and `note` may be one column. */
export type TableLayout = Readonly<{
  columns: TableColumns & Readonly<{ counter: number }>;
  /** The note takes all cells to the row's end: commas in it were not quoted. */
  noteToEnd: boolean;
  /** Units of bare numbers. */
  style: Readonly<{ counter: LengthStyle; to: LengthStyle }>;
  /** The counter's heading names its unit. */
  counterHasUnit: boolean;
  header: TableRecord | null;
}>;

export type LayoutProblem = Readonly<{
  code: 'no-counter-column' | 'two-counter-columns';
  record: TableRecord;
}>;

/** Finds the columns by the words of a header, or by what is in them when there is none. */
export function findLayout(
  sample: readonly TableRecord[],
  unit: LengthStyle,
  match: ThingMatcher,
): TableLayout | LayoutProblem | null {
  const [first] = sample;
  if (first === undefined) return null;
  const header = findHeader(sample);
  if (header === null) {
    const guessed = guessColumns(sample, match);
    if (typeof guessed === 'string') return { code: guessed, record: first };
    const style = { counter: unit, to: unit };
    return { columns: guessed, noteToEnd: true, style, counterHasUnit: false, header: null };
  }

  const headings = header.cells.map(headingOf);
  const told = matchHeadings(headings);
  if (told.counter === undefined) return { code: 'no-counter-column', record: header };
  // Many keep a counter and remarks, and no more.
  const seen = told.seen ?? seenByContent(sample, new Set(Object.values(told)), match) ?? told.note;
  const columns = { ...told, counter: told.counter, ...(seen !== undefined && { seen }) };
  const styleAt = (at: number, otherwise: LengthStyle) =>
    styleUnder(headings[at] ?? { words: [] }, otherwise);
  const counter = styleAt(columns.counter, unit);
  return {
    columns,
    noteToEnd: columns.note !== undefined && columns.note === header.cells.length - 1,
    style: { counter, to: columns.to === undefined ? counter : styleAt(columns.to, counter) },
    counterHasUnit: headings[columns.counter]?.unit !== undefined,
    header,
  };
}

/**
 * The row near the top that has headings of a counter and of something else, or the very first row if it has a counter's or
 * two of others. None of a header's cells is a length, and above it none stands where the counter is.
 */
function findHeader(sample: readonly TableRecord[]): TableRecord | null {
  const top = sample.slice(0, HEADER_WITHIN_ROWS);
  for (const [index, record] of top.entries()) {
    if (record.cells.some(isLength)) continue;
    const columns = matchHeadings(record.cells.map(headingOf));
    const { counter } = columns;
    const matched = Object.keys(columns).length;
    if (counter === undefined) {
      if (index === 0 && matched > 1) return record;
      continue;
    }
    if (matched === 1 && index > 0) continue;
    if (top.slice(0, index).every(({ cells }) => !isLength(cells[counter] ?? ''))) return record;
  }
  return null;
}
