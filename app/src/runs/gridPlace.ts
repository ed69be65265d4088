import type { ColumnId } from './readingColumns';

/** The column that opens a row, then those that are typed in. */
export type GridColumn = 'mark' | ColumnId;

/**
 * Where the hand is in the table. `rest`: elsewhere on the page, a Tab comes back here; `cell`: on the cell; `edit`: in it, with
 * the letter that began it, if a letter did.
 */
export type GridPlace = {
  readonly row: number;
  readonly column: GridColumn;
  readonly mode: 'rest' | 'cell' | 'edit';
  readonly begunWith?: string;
  readonly byPointer?: true;
};

export type GridMove = 'up' | 'down' | 'left' | 'right' | 'next' | 'previous' | 'row-start' | 'row-end';

type Size = { readonly rows: number; readonly columns: readonly GridColumn[] };

/**
 * The place that a move leads to; null where the table ends. `next` and `previous` go over to the other row at a row's ends and
 * pass by the column that opens rows.
 */
export function movedInGrid(
  { row, column }: GridPlace,
  move: GridMove,
  { rows, columns }: Size,
): { readonly row: number; readonly column: GridColumn } | null {
  const at = columns.indexOf(column);
  const within = (r: number, c: number) => {
    const found = columns[c];
    return r < 0 || r >= rows || found === undefined ? null : { row: r, column: found };
  };
  switch (move) {
    case 'up':
      return within(row - 1, at);
    case 'down':
      return within(row + 1, at);
    case 'left':
      return within(row, at - 1);
    case 'right':
      return within(row, at + 1);
    case 'next':
      return within(row, at + 1) ?? within(row + 1, 1);
    case 'previous':
      return at > 1 ? within(row, at - 1) : within(row - 1, columns.length - 1);
    case 'row-start':
      return within(row, 0);
    case 'row-end':
      return within(row, columns.length - 1);
  }
}
