import { formulaFree, plainText } from './harmless';

/** A cell of a table: text, a number, or nothing. */
export type CsvCell = string | number | null;

const NEEDS_QUOTES = /[",\r\n]|^\s|\s$/;

/**
 * Comma-separated values as in RFC 4180: CRLF after every row, quotes around cells that need them, quotes in them doubled.
 * Text that a spreadsheet would run as a formula gets a leading apostrophe; numbers stay plain, negative ones too.
 * Throws a RangeError for a number that is not finite.
 */
export function csvText(rows: readonly (readonly CsvCell[])[]): string {
  return rows.map((row) => `${row.map(cellText).join(',')}\r\n`).join('');
}

function cellText(cell: CsvCell): string {
  if (cell === null) return '';
  if (typeof cell === 'number') {
    if (!Number.isFinite(cell)) throw new RangeError(`a cell must be finite, got ${cell}`);
    return String(cell);
  }
  const text = formulaFree(plainText(cell));
  return NEEDS_QUOTES.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
