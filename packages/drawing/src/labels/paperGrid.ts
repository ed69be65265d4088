import { type Box, hullOf, type Segment } from './box';

/** Side (mm) of a cell: about the size of a label. */
const CELL_MM = 12;
/** Bits of a cell's row and column in its key, which so is a small integer. Cells this far apart (400 m) share a key. */
const KEY_BITS = 15;
const KEY_MASK = 2 ** KEY_BITS - 1;

/** Things with an upright hull, found again by place; things can be added at any time. */
export type PaperGrid<T> = Readonly<{
  add: (thing: T, hull: Hull) => void;
  /** Everything whose cells the hull touches, each once, in no order; now and then something that is far away. */
  near: (hull: Hull) => T[];
}>;

export type Hull = Readonly<{ minX: number; minY: number; maxX: number; maxY: number }>;

export function hullOfBox(box: Box): Hull {
  const half = hullOf(box);
  return { minX: box.x - half.x, minY: box.y - half.y, maxX: box.x + half.x, maxY: box.y + half.y };
}

export function hullOfSegment({ ax, ay, bx, by }: Segment): Hull {
  return { minX: Math.min(ax, bx), minY: Math.min(ay, by), maxX: Math.max(ax, bx), maxY: Math.max(ay, by) };
}

export function hullAbout(x: number, y: number, radius: number): Hull {
  return { minX: x - radius, minY: y - radius, maxX: x + radius, maxY: y + radius };
}

export function paperGrid<T>(): PaperGrid<T> {
  const cells = new Map<number, { thing: T; asked: number }[]>();
  let question = 0;
  return {
    add: (thing, hull) => {
      const entry = { thing, asked: 0 };
      const { firstI, lastI, firstJ, lastJ } = cellsOf(hull);
      for (let i = firstI; i <= lastI; i += 1) {
        for (let j = firstJ; j <= lastJ; j += 1) {
          const cell = cells.get(keyOf(i, j));
          if (cell === undefined) cells.set(keyOf(i, j), [entry]);
          else cell.push(entry);
        }
      }
    },
    near: (hull) => {
      question += 1;
      const found: T[] = [];
      const { firstI, lastI, firstJ, lastJ } = cellsOf(hull);
      for (let i = firstI; i <= lastI; i += 1) {
        for (let j = firstJ; j <= lastJ; j += 1) {
          const cell = cells.get(keyOf(i, j));
          if (cell === undefined) continue;
          for (const entry of cell) {
            // a thing lies in several cells
            if (entry.asked === question) continue;
            entry.asked = question;
            found.push(entry.thing);
          }
        }
      }
      return found;
    },
  };
}

function cellsOf({ minX, minY, maxX, maxY }: Hull) {
  return {
    firstI: Math.floor(minX / CELL_MM),
    lastI: Math.floor(maxX / CELL_MM),
    firstJ: Math.floor(minY / CELL_MM),
    lastJ: Math.floor(maxY / CELL_MM),
  };
}

function keyOf(i: number, j: number): number {
  return ((i & KEY_MASK) << KEY_BITS) | (j & KEY_MASK);
}
