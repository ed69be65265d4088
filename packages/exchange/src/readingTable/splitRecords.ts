import { MOST_CELL_CHARACTERS, MOST_TABLE_COLUMNS } from './tableLimits';

/** What stands between cells; `spaces`: two or more; `none`: each line is one cell. */
export type Separator = '\t' | ';' | ',' | 'spaces' | 'none';

/** A row's cells, trimmed, the line on which it begins, counted from 1, and the index of the line after it. */
export type TableRecord = Readonly<{ line: number; next: number; cells: readonly string[] }>;

/** Whether a line by itself is a row of the table. */
export type IsRow = (cells: readonly string[]) => boolean;

/** Separators alone are blank, also where they separate nothing. */
const NOT_BLANK = /[^,;]/;

const SEVERAL_SPACES = /[ \u00a0]{2,}/;

/**
 * The rows that are not blank, at most `most` of them, from the line `from` (from 0). A cell in quotes may hold separators,
 * doubled quotes and line breaks, as in RFC 4180, but a quote is one only if its partner stands before a separator or a
 * line's end: inch marks and stray quotes stay what they are. A cell ends before a line that is a row by itself, so that an
 * open quote costs its own row and no other.
 *
 * The time is linear in the text: where a search for the partner fails, no later quote's search covers the same stretch.
 */
export function splitRecords(
  lines: readonly string[],
  separator: Separator,
  { from = 0, most, isRow }: Readonly<{ from?: number; most: number; isRow: IsRow }>,
): readonly TableRecord[] {
  const records: TableRecord[] = [];
  const rowsBySelf: IsRowAt = (line) => isRow(splitLine(lines[line] ?? '', separator));
  for (let at = from; at < lines.length && records.length < most; ) {
    if (lines[at] === '') {
      at += 1;
      continue;
    }
    const { cells, next } = recordAt(lines, at, separator, rowsBySelf);
    if (cells.some((cell) => NOT_BLANK.test(cell))) records.push({ line: at + 1, next, cells });
    at = next;
  }
  return records;
}

/** The cells of one line, quotes read within it. */
export function splitLine(line: string, separator: Separator): readonly string[] {
  return recordAt([line], 0, separator, () => true).cells;
}

type IsRowAt = (line: number) => boolean;

function recordAt(
  lines: readonly string[],
  first: number,
  separator: Separator,
  isRowAt: IsRowAt,
): Readonly<{ cells: readonly string[]; next: number }> {
  const whole = lines[first] ?? '';
  if (separator === 'none') return { cells: [whole.trim()], next: first + 1 };
  if (separator === 'spaces')
    return { cells: trimmed(whole.trim().split(SEVERAL_SPACES, MOST_TABLE_COLUMNS + 1)), next: first + 1 };
  if (!whole.includes('"'))
    return { cells: trimmed(whole.split(separator, MOST_TABLE_COLUMNS + 1)), next: first + 1 };

  const cells: string[] = [];
  let line = first;
  let at = 0;
  while (cells.length <= MOST_TABLE_COLUMNS) {
    const current = lines[line] ?? '';
    const start = pastBlanks(current, at);
    const quoted = current[start] === '"' ? quotedCell(lines, line, start + 1, separator, isRowAt) : null;
    if (quoted !== null) {
      cells.push(quoted.text);
      ({ line, at } = quoted);
    } else {
      const end = current.indexOf(separator, at);
      cells.push(current.slice(at, end < 0 ? undefined : end));
      at = end < 0 ? current.length : end;
    }
    if (at >= (lines[line] ?? '').length) break;
    at += 1;
  }
  return { cells: trimmed(cells), next: line + 1 };
}

/** The cell whose opening quote stands before `at`, and the place after it: a separator or the line's end. */
function quotedCell(
  lines: readonly string[],
  first: number,
  from: number,
  separator: string,
  isRowAt: IsRowAt,
): Readonly<{ text: string; line: number; at: number }> | null {
  let text = '';
  let line = first;
  let at = from;
  while (text.length <= MOST_CELL_CHARACTERS) {
    const current = lines[line] ?? '';
    const quote = current.indexOf('"', at);
    if (quote < 0) {
      text += `${current.slice(at)}\n`;
      line += 1;
      at = 0;
      if (line >= lines.length || isRowAt(line)) return null;
    } else if (current[quote + 1] === '"') {
      text += current.slice(at, quote + 1);
      at = quote + 2;
    } else {
      const end = pastBlanks(current, quote + 1);
      if (end < current.length && current[end] !== separator) return null;
      return { text: text + current.slice(at, quote), line, at: end };
    }
  }
  return null;
}

function pastBlanks(line: string, from: number): number {
  let at = from;
  while (line[at] === ' ') at += 1;
  return at;
}

function trimmed(cells: readonly string[]): readonly string[] {
  return cells.map((cell) => cell.trim());
}
