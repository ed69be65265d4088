import { describe, expect, it } from 'vitest';
import { type GridColumn, type GridMove, movedInGrid } from './gridPlace';

const columns: readonly GridColumn[] = ['mark', 'counter', 'seen', 'note'];
const size = { rows: 3, columns };

describe('moves in the table of readings', () => {
  it.each<[number, GridColumn, GridMove, string]>([
    [0, 'counter', 'down', '1 counter'],
    [2, 'counter', 'down', 'out'],
    [0, 'note', 'up', 'out'],
    [1, 'mark', 'left', 'out'],
    [1, 'note', 'right', 'out'],
    [1, 'counter', 'left', '1 mark'],
    [1, 'seen', 'next', '1 note'],
    [1, 'note', 'next', '2 counter'],
    [2, 'note', 'next', 'out'],
    [1, 'counter', 'previous', '0 note'],
    [0, 'counter', 'previous', 'out'],
    [1, 'note', 'previous', '1 seen'],
    [1, 'note', 'row-start', '1 mark'],
    [1, 'mark', 'row-end', '1 note'],
  ])('from %i %s %s: %s', (row, column, move, expected) => {
    const to = movedInGrid({ row, column, mode: 'edit' }, move, size);
    expect(to === null ? 'out' : `${to.row} ${to.column}`).toBe(expected);
  });
});
