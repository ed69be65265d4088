import { describe, expect, it } from 'vitest';
import { neighboursOf, tilesOver } from './tiles';

const bounds = { minX: 0, minY: 0, maxX: 25, maxY: 12 };
const size = { width: 10, height: 10 };

describe('pieces of a yard', () => {
  it('cover it side by side, without overlap and with the rest shared by all sides', () => {
    const tiles = tilesOver(bounds, size, () => false) ?? [];
    expect(tiles.map((t) => t.number)).toEqual([1, 2, 3, 4, 5, 6]);
    expect(tiles.map((t) => t.corner)).toEqual([
      { x: -2.5, y: 6 },
      { x: 7.5, y: 6 },
      { x: 17.5, y: 6 },
      { x: -2.5, y: -4 },
      { x: 7.5, y: -4 },
      { x: 17.5, y: -4 },
    ]);
  });

  it('on which nothing lies are left out, and are nobody’s neighbours', () => {
    const tiles = tilesOver(bounds, size, ({ minX, minY }) => minX > 0 && minX < 10 && minY > 0) ?? [];
    expect(tiles.map((t) => [t.column, t.row])).toEqual([
      [0, 0],
      [2, 0],
      [0, 1],
      [1, 1],
      [2, 1],
    ]);
    const [first] = tiles;
    if (first === undefined) throw new Error('no piece');
    const { left, right, upper, lower } = neighboursOf(first, tiles);
    expect([left, right, upper, lower?.number]).toEqual([null, null, null, 3]);
  });

  it('of a yard that fits, or that fills its piece, are one', () => {
    expect(tilesOver({ minX: 0, minY: 0, maxX: 10, maxY: 10 }, size, () => true)?.length).toBe(1);
  });

  it('that nobody would look at are not made', () => {
    expect(tilesOver({ minX: 0, minY: 0, maxX: 1e6, maxY: 1e6 }, size, () => true)).toBeNull();
  });
});
