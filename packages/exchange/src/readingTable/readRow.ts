import type { ParseFailure } from '@footmark/site';
import type { TableProblemCode } from '@footmark/words';
import { type ThingMatch, type ThingMatcher, wordKey } from './matchThing';
import { clockOf, lengthOf, videoTimeOf } from './measureCell';
import { passedOf } from './passedCell';
import type { ReadingRow, TableColumn, TableProblem } from './readingTable';
import type { Separator, TableRecord } from './splitRecords';
import type { TableLayout } from './tableLayout';
import {
  LARGEST_COUNTER_M,
  MOST_CELL_CHARACTERS,
  MOST_MEASURE_CHARACTERS,
  MOST_NOTE_CHARACTERS,
  MOST_TABLE_COLUMNS,
} from './tableLimits';
import { tableProblem } from './tableProblem';
import { blockedWords } from './tradeWords';

/** How the rows of one table are read. */
export type RowSetting = Readonly<{
  layout: TableLayout;
  separator: Separator;
  decimalComma: boolean;
  match: ThingMatcher;
}>;

type RowResult = Readonly<{ row: ReadingRow | null; problems: readonly TableProblem[] }>;

/** Reads one row: without a counter it is left out whole, of anything else only the cell that cannot be read. */
export function readRow(record: TableRecord, setting: RowSetting): RowResult {
  const { layout, decimalComma, match } = setting;
  const leftOut = (problem: TableProblem): RowResult => ({ row: null, problems: [problem] });
  const unfit = shapeProblem(record, setting);
  if (unfit !== null) return leftOut(unfit);

  const problems: TableProblem[] = [];
  const text = (column: TableColumn) => cellOf(record, layout, column);
  const problem = (code: TableProblemCode, column: TableColumn, rowKept: boolean, because?: ParseFailure) =>
    tableProblem(code, record, { column: layout.columns[column] ?? null, rowKept, because });
  const miss = (code: TableProblemCode, column: TableColumn, because?: ParseFailure) => {
    problems.push(problem(code, column, true, because));
  };

  const counter = lengthOf(text('counter'), layout.style.counter, decimalComma);
  if (!counter.ok) return leftOut(problem('not-a-length', 'counter', false, counter));
  if (counter.value > LARGEST_COUNTER_M) return leftOut(problem('counter-too-large', 'counter', false));

  const to = text('to') === '' ? null : lengthOf(text('to'), layout.style.to, decimalComma);
  if (to?.ok === false) miss('not-a-length', 'to', to);
  else if (to && to.value > LARGEST_COUNTER_M) miss('counter-too-large', 'to');
  else if (to && to.value < counter.value) miss('to-before-from', 'to');
  const goesOn = to?.ok && to.value > counter.value && to.value <= LARGEST_COUNTER_M;

  const thing = match(text('seen'));
  if (layout.columns.seen !== undefined && thing === null)
    miss(text('seen') === '' ? 'seen-missing' : 'unknown-thing-seen', 'seen');

  const clock = text('clock') === '' ? null : clockOf(text('clock'));
  if (clock?.ok === false) miss('clock-not-read', 'clock', clock);

  const passed = (['passed', 'blocked'] as const).map((column) => {
    const said = text(column) === '' ? true : passedOf(text(column), column);
    if (said === null) miss('passed-not-read', column);
    return said ?? true;
  });

  const videoAt = videoTimeOf(text('videoAt'));
  if (videoAt === null && text('videoAt') !== '') miss('video-time-not-read', 'videoAt');

  const note = noteOf(record, setting, thing, clock?.ok === false);
  if (note.length > MOST_NOTE_CHARACTERS) return leftOut(problem('cell-too-long', 'note', false));
  const row = {
    line: record.line,
    counter: counter.value,
    ...(goesOn && { to: to.value }),
    seen: thing?.kind ?? null,
    ...(clock?.ok && { clock: clock.value }),
    passed: passed.every(Boolean) && !BLOCKED.has(wordKey(text('seen'))),
    note,
    ...(videoAt !== null && { videoAt }),
  };
  return { row, problems };
}

const BLOCKED: ReadonlySet<string> = new Set(blockedWords.map(wordKey));

/** What keeps a row out before its counter is read. */
function shapeProblem(record: TableRecord, { layout, separator }: RowSetting): TableProblem | null {
  const { columns, header, noteToEnd } = layout;
  const out = (code: TableProblemCode, column: number | null) =>
    tableProblem(code, record, { column, rowKept: false });
  const { cells } = record;
  const width = header === null || noteToEnd ? MOST_TABLE_COLUMNS : header.cells.length;
  if (cells.slice(0, columns.note).some(isTotal)) return out('total-row', null);
  if (cells.length > MOST_TABLE_COLUMNS || cells.slice(width).some((text) => text !== ''))
    return out('too-many-cells', null);
  const long = cells.findIndex((text) => text.length > MOST_CELL_CHARACTERS);
  if (long >= 0) return out('cell-too-long', long);

  const counter = cellOf(record, layout, 'counter');
  if (counter === '') return out('counter-missing', columns.counter ?? null);
  if (separator === ',' && isDigits(counter) && isDigits(cellOf(record, layout, 'seen')))
    return out('number-cut-by-comma', columns.counter ?? null);
  return null;
}

const TOTALS: ReadonlySet<string> = new Set(
  [
    'total',
    'grand total',
    'subtotal',
    'total length',
    'total footage',
    'total distance',
    'total ft',
    'total m',
    'sum',
  ].map(wordKey),
);

/** `Total`, `Total: 45.2 ft`; not `total collapse`. */
function isTotal(text: string): boolean {
  return TOTALS.has(wordKey(text.slice(0, MOST_MEASURE_CHARACTERS).split(/[\d:=]/, 1)[0] ?? ''));
}

function isDigits(text: string): boolean {
  return /^\d+$/.test(text);
}

function cellOf({ cells }: TableRecord, { columns }: TableLayout, column: TableColumn): string {
  const at = columns[column];
  return at === undefined ? '' : (cells[at] ?? '');
}

/** The note, after what was said of the thing seen and of the clock in words that a reading has no other place for. */
function noteOf(
  record: TableRecord,
  { layout, separator }: RowSetting,
  thing: ThingMatch | null,
  keepClock: boolean,
): string {
  const { seen, note: from } = layout.columns;
  const noted = from === undefined ? [] : record.cells.slice(from, layout.noteToEnd ? undefined : from + 1);
  const inOne = from === seen && thing?.whole === true;
  const parts = [
    thing?.whole || from === seen ? '' : cellOf(record, layout, 'seen'),
    keepClock ? cellOf(record, layout, 'clock') : '',
    noted
      .slice(inOne ? 1 : 0)
      .filter((text) => text !== '')
      .join(separator === ',' ? ', ' : '; '),
  ];
  return parts
    .map(withoutGuard)
    .filter((text) => text !== '')
    .join('; ');
}

/** Tables are written with an apostrophe before text that a spreadsheet would run as a formula. */
function withoutGuard(text: string): string {
  return text.replace(/^'(?=[=+\-@])/, '');
}
