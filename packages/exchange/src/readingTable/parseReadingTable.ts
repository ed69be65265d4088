import type { LengthStyle, ObservationKind } from '@footmark/site';
import type { TableProblemCode } from '@footmark/words';
import { findSeparator } from './findSeparator';
import { thingMatcher } from './matchThing';
import { hasDecimalComma, isBareLength, isLength } from './measureCell';
import type { ReadingRow, ReadingTable, TableProblem } from './readingTable';
import { readRow } from './readRow';
import { splitRecords, type TableRecord } from './splitRecords';
import { findLayout, type TableLayout } from './tableLayout';
import { MOST_QUOTED_CHARACTERS, MOST_TABLE_CHARACTERS, MOST_TABLE_ROWS, SAMPLE_ROWS } from './tableLimits';
import { tableProblem } from './tableProblem';

const WHOLE_TEXT: TableRecord = { line: 1, next: 0, cells: [] };

/**
 * Reads a table of counter readings as it is pasted from a spreadsheet or typed. `unit` is that of bare numbers where the
 * header names none, `names` the things seen in the language of the table. Never throws; what cannot be read is a problem by
 * its line and column, and costs its row or its cell, never another row.
 */
export function parseReadingTable(
  text: string,
  { unit, names }: Readonly<{ unit: LengthStyle; names: (kind: ObservationKind) => string }>,
): ReadingTable {
  const nothing = (code: TableProblemCode, record = WHOLE_TEXT): ReadingTable => ({
    rows: [],
    problems: [tableProblem(code, record, { column: null, rowKept: false })],
    columns: {},
    unread: [],
    unit,
    unitIsAssumed: false,
  });
  if (text.length > MOST_TABLE_CHARACTERS) return nothing('text-too-long');
  const lines = text.replace(/^\uFEFF/, '').split(/\r\n|\n|\r/);
  const match = thingMatcher(names);
  const separator = findSeparator(lines, match);

  const sample = splitRecords(lines, separator, {
    most: SAMPLE_ROWS,
    isRow: (cells) => cells.some(isLength),
  });
  const layout = findLayout(sample, unit, match);
  if (layout === null) return nothing('no-rows');
  if ('code' in layout) return nothing(layout.code, layout.record);

  const { header, columns } = layout;
  const records = splitRecords(lines, separator, {
    from: header?.next ?? 0,
    most: MOST_TABLE_ROWS + 1,
    isRow: (cells) => isLength(cells[columns.counter] ?? ''),
  });
  if (records.length === 0) return nothing('no-rows');
  const decimalComma = hasDecimalComma(lengthCells(records, layout));

  const rows: ReadingRow[] = [];
  const problems = aboveHeader(sample, header);
  for (const [index, record] of records.entries()) {
    if (index === MOST_TABLE_ROWS) {
      problems.push(tableProblem('too-many-rows', record, { column: null, rowKept: false }));
      break;
    }
    if (header !== null && isSameRow(record, header)) continue;
    const read = readRow(record, { layout, separator, decimalComma, match });
    if (read.row !== null) rows.push(read.row);
    problems.push(...read.problems);
  }
  return {
    rows,
    problems,
    columns,
    unread: unreadHeadings(layout),
    unit: layout.style.counter,
    unitIsAssumed:
      !layout.counterHasUnit && records.some(({ cells }) => isBareLength(cells[columns.counter] ?? '')),
  };
}

function aboveHeader(sample: readonly TableRecord[], header: TableRecord | null): TableProblem[] {
  return sample
    .slice(0, header === null ? 0 : sample.indexOf(header))
    .map((record) => tableProblem('above-header', record, { column: null, rowKept: false }));
}

/** Tables of several pages have their header on each. */
function isSameRow(a: TableRecord, b: TableRecord): boolean {
  return a.cells.length === b.cells.length && a.cells.every((text, at) => text === b.cells[at]);
}

function lengthCells(records: readonly TableRecord[], { columns }: TableLayout): readonly string[] {
  const places = [columns.counter, columns.to].filter((at) => at !== undefined);
  return records.flatMap(({ cells }) => places.map((at) => cells[at] ?? ''));
}

function unreadHeadings({ columns, header }: TableLayout): ReadingTable['unread'] {
  const read = new Set(Object.values(columns));
  return (header?.cells ?? []).flatMap((text, column) =>
    read.has(column) || text === '' ? [] : [{ column, text: text.slice(0, MOST_QUOTED_CHARACTERS) }],
  );
}
