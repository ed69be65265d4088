import { fail, ok } from '@footmark/geometry';
import { splitLine } from '../../readingTable/splitRecords';
import { decimalNumber } from '../decimalNumber';
import type { IncomingSteps } from '../incoming';
import { MOST_CHARACTERS, MOST_THINGS, STEP } from '../incomingLimits';
import { orderInComment, type TableHeading, tableHeading } from './pointTable';

const SEPARATORS = ['\t', ';', ','] as const;

/** Cells of a row that are kept. */
const MOST_CELLS = 40;

/**
 * Reads a table of points: rows of cells, parted by tabs, semicolons or commas, lines that begin with `#` as comments. What the columns are is
 * said by headings or by a comment of letters (`# P,N,E,Z,D`), or else asked. No cell is read as a number before that.
 */
export function* readPointTable(text: string): IncomingSteps {
  if (text.length > MOST_CHARACTERS)
    return fail('too-large', { characters: text.length, most: MOST_CHARACTERS });
  const lines = text.replace(/^\ufeff/, '').split(/\r\n|\r|\n/);
  const separator = separatorOf(lines);
  if (separator === null) return fail('unknown-format');
  const rows: string[][] = [];
  let order: string | null = null;
  let heading: TableHeading | null = null;
  for (const [i, line] of lines.entries()) {
    if (i % STEP === 0) yield i / lines.length;
    if (line.trim() === '') continue;
    if (line.startsWith('#')) {
      order ??= orderInComment(line);
      continue;
    }
    const cells = splitLine(line, separator).slice(0, MOST_CELLS);
    if (rows.length === 0 && heading === null) {
      heading = tableHeading(cells);
      if (heading !== null) continue;
    }
    if (rows.length >= MOST_THINGS) return fail('too-many-things', { most: MOST_THINGS });
    rows.push([...cells]);
  }
  // text with commas in it is no table yet
  if (!rows.some(hasPlace)) return fail(heading === null ? 'unknown-format' : 'nothing-in-it');
  return ok({
    format: 'table',
    says: {
      coordinates: heading?.earth === true ? { is: 'earth' } : null,
      unit: heading?.unit ?? null,
      order: heading?.order ?? order,
    },
    things: [],
    rows,
    notes: [],
  });
}

/** Whether two cells of a row are numbers. */
function hasPlace(cells: readonly string[]): boolean {
  return cells.filter((cell) => Number.isFinite(decimalNumber(cell.trim()))).length >= 2;
}

/** The separator that most of the first rows have, as often in each; null for none. */
function separatorOf(lines: readonly string[]): (typeof SEPARATORS)[number] | null {
  const sample = lines.filter((line) => line.trim() !== '' && !line.startsWith('#')).slice(0, 20);
  const scored = SEPARATORS.map((separator) => ({
    separator,
    rows: sample.filter((line) => line.split(separator).length > 1).length,
  })).filter(({ rows }) => rows > 0);
  return scored.sort((a, b) => b.rows - a.rows)[0]?.separator ?? null;
}
