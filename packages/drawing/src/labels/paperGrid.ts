import { type Box, hullOf } from './box';

/** Side (mm) of a cell: about the size of a label. */
const CELL_MM = 12;
/** Keys stay exact integers for cells up to this far from the origin. */
const HALF_RANGE = 2 ** 25;

/** Things with an upright hull, found again by place; things can be added at any time. */
export type PaperGrid<T> = Readonly<{
  add: (thing: T, hull: Hull) => void;
  /** Everything whose cells the hull touches, each once, in the order of adding. */
  near: (hull: Hull) => readonly T[];
}>;

export type Hull = Readonly<{ minX: number; minY: number; maxX: number; maxY: number }>;

export function hullOfBox(box: Box): Hull {
  const half = hullOf(box);
  return { minX: box.x - half.x, minY: box.y - half.y, maxX: box.x + half.x, maxY: box.y + half.y };
}

export function paperGrid<T>(): PaperGrid<T> {
  const cells = new Map<number, number[]>();
  const things: T[] = [];
  const visit = (hull: Hull, at: (key: number) => void) => {
    for (let i = Math.floor(hull.minX / CELL_MM); i <= Math.floor(hull.maxX / CELL_MM); i += 1) {
      for (let j = Math.floor(hull.minY / CELL_MM); j <= Math.floor(hull.maxY / CELL_MM); j += 1) {
        at((i + HALF_RANGE) * 2 * HALF_RANGE + j + HALF_RANGE);
      }
    }
  };
  return {
    add: (thing, hull) => {
      const index = things.push(thing) - 1;
      visit(hull, (key) => {
        const cell = cells.get(key);
        if (cell === undefined) cells.set(key, [index]);
        else cell.push(index);
      });
    },
    near: (hull) => {
      const found = new Set<number>();
      visit(hull, (key) => {
        for (const index of cells.get(key) ?? []) found.add(index);
      });
      return [...found].sort((a, b) => a - b).map((index) => things[index] as T); // indexes come from this list
    },
  };
}
