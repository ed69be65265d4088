import { type Box, hullOf, type Segment } from './box';

/** Side (mm) of a cell: about the size of a label. */
const CELL_MM = 12;
/** Keys stay exact integers for cells up to this far from the origin. */
const HALF_RANGE = 2 ** 25;

/** Things with an upright hull, found again by place; things can be added at any time. */
export type PaperGrid<T> = Readonly<{
  add: (thing: T, hull: Hull) => void;
  /** Everything whose cells the hull touches, each once, in no order. */
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
  const visit = (hull: Hull, at: (key: number) => void) => {
    const lastI = Math.floor(hull.maxX / CELL_MM);
    const firstJ = Math.floor(hull.minY / CELL_MM);
    const lastJ = Math.floor(hull.maxY / CELL_MM);
    for (let i = Math.floor(hull.minX / CELL_MM); i <= lastI; i += 1) {
      for (let j = firstJ; j <= lastJ; j += 1) at((i + HALF_RANGE) * 2 * HALF_RANGE + j + HALF_RANGE);
    }
  };
  return {
    add: (thing, hull) => {
      const entry = { thing, asked: 0 };
      visit(hull, (key) => {
        const cell = cells.get(key);
        if (cell === undefined) cells.set(key, [entry]);
        else cell.push(entry);
      });
    },
    near: (hull) => {
      question += 1;
      const found: T[] = [];
      visit(hull, (key) => {
        for (const entry of cells.get(key) ?? []) {
          // a thing lies in several cells
          if (entry.asked === question) continue;
          entry.asked = question;
          found.push(entry.thing);
        }
      });
      return found;
    },
  };
}
