import type { ParseFailure } from '@footmark/site';
import type { TableProblemCode } from '@footmark/words';
import type { TableProblem } from './readingTable';
import type { TableRecord } from './splitRecords';
import { MOST_QUOTED_CHARACTERS } from './tableLimits';

/** A problem of a row, which quotes the cell, or the whole row where no column is named or the cell is blank. */
export function tableProblem(
  code: TableProblemCode,
  { line, cells }: TableRecord,
  at: Readonly<{ column: number | null; rowKept: boolean; because?: ParseFailure | undefined }>,
): TableProblem {
  const cell = at.column === null ? '' : (cells[at.column] ?? '');
  const quoted = cell === '' ? cells.filter((text) => text !== '').join(' ') : cell;
  return {
    line,
    column: at.column,
    code,
    text: quoted.slice(0, MOST_QUOTED_CHARACTERS),
    rowKept: at.rowKept,
    ...(at.because && { because: at.because }),
  };
}
