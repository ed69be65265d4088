import type { Bounds } from '@footmark/drawing';
import type { Point } from '@footmark/geometry';

/** One piece of a yard that is larger than a page. */
export type Tile = Readonly<{
  /** From the upper left, row by row, as the sheets are numbered. */
  number: number;
  column: number;
  row: number;
  /** Of the plan (m): its lower left corner. */
  corner: Point;
}>;

/** A sheet of more plans than this is no sheet. */
export const MOST_TILES = 60;
const MOST_LOOKED_AT = 100 * MOST_TILES;

/**
 * Pieces of plan of one size (m) that cover the bounds without overlap, the rest shared by all sides; pieces that `isEmpty` are left out. A
 * yard that fits gives one piece. Null for more pieces than are worth looking at.
 */
export function tilesOver(
  bounds: Bounds,
  size: Readonly<{ width: number; height: number }>,
  isEmpty: (piece: Bounds) => boolean,
): readonly Tile[] | null {
  const [wide, high] = [bounds.maxX - bounds.minX, bounds.maxY - bounds.minY];
  const columns = Math.max(1, Math.ceil(wide / size.width - ROUNDING));
  const rows = Math.max(1, Math.ceil(high / size.height - ROUNDING));
  if (columns * rows > MOST_LOOKED_AT) return null;
  const left = bounds.minX - (columns * size.width - wide) / 2;
  const top = bounds.maxY + (rows * size.height - high) / 2;
  const tiles: Tile[] = [];
  for (let row = 0; row < rows; row += 1) {
    for (let column = 0; column < columns; column += 1) {
      const corner = { x: left + column * size.width, y: top - (row + 1) * size.height };
      const piece = {
        minX: corner.x,
        minY: corner.y,
        maxX: corner.x + size.width,
        maxY: corner.y + size.height,
      };
      if (rows * columns > 1 && isEmpty(piece)) continue;
      tiles.push({ number: tiles.length + 1, column, row, corner });
    }
  }
  return tiles;
}

/** A yard that fills its pages exactly needs no more of them. */
const ROUNDING = 1e-9;

/** The neighbours of a tile: over its left, right, upper and lower edge. */
export function neighboursOf(tile: Tile, tiles: readonly Tile[]): Readonly<Record<Edge, Tile | null>> {
  const at = (column: number, row: number) => tiles.find((t) => t.column === column && t.row === row) ?? null;
  return {
    left: at(tile.column - 1, tile.row),
    right: at(tile.column + 1, tile.row),
    upper: at(tile.column, tile.row - 1),
    lower: at(tile.column, tile.row + 1),
  };
}

export type Edge = 'left' | 'right' | 'upper' | 'lower';
