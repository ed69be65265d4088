import { distance, type Point } from '@footmark/geometry';
import FlatQueue from 'flatqueue';
import type { RouteRequest } from '../request';
import { borderOf, distanceToEnd, type Grid, gridOf, visitCells } from './grid';
import type { Solid } from './solid';

/** About so many cells make up the ground that is looked at. */
const CELLS = 12_000;
/** Ways over cells in sixteen directions are longer than the straight ones, by 1 in 36 at the most; this is about the average. */
const STRAIGHTER = 0.985;

/** To each side of a fence, in cells: no step is so long that it leads over it. */
const FENCE_CELLS = 1.2;

const STEPS: readonly (readonly [dx: number, dy: number])[] = [-2, -1, 0, 1, 2].flatMap((dx) =>
  [-2, -1, 0, 1, 2].flatMap((dy): (readonly [number, number])[] =>
    (dx !== 0 || dy !== 0) && Math.abs(dx) + Math.abs(dy) !== 4 && !isLong(dx, dy) ? [[dx, dy]] : [],
  ),
);

const ACROSS = Int8Array.from(STEPS, ([dx]) => dx);
const UP = Int8Array.from(STEPS, ([, dy]) => dy);

/** Two cells straight on are two steps. */
function isLong(dx: number, dy: number): boolean {
  return (Math.abs(dx) === 2 && dy === 0) || (Math.abs(dy) === 2 && dx === 0);
}

/**
 * What a way without any bends costs from a place to the nearest end, around all that must be kept clear of and over ground that costs: over
 * cells, so that it is near the truth and mostly a little below it. 0 outside the ground that was looked at; Infinity where no way leads to an end.
 */
export type Field = (x: number, y: number) => number;

export function fieldOf(request: RouteRequest, fences: readonly Solid[] = []): Field {
  const grid = gridOf(request, CELLS);
  const { left, bottom, cell, columns, rows } = grid;
  const extra = costsOf(request, fences, grid);
  const cost = costsToEnds(request, grid, extra);
  const least = cost.map((value, k) =>
    Math.max(0, STRAIGHTER * value - 0.5 * cell * (1 + dearestAbout(extra, grid, k))),
  );
  return (x, y) => {
    const [i, j] = [Math.floor((x - left) / cell), Math.floor((y - bottom) / cell)];
    if (i < 0 || j < 0 || i >= columns || j >= rows) return 0;
    return least[j * columns + i] ?? 0;
  };
}

/** The dearest ground of a cell and its neighbours: so much may be wrong with what leads on from their middles. */
function dearestAbout(extra: Float64Array, { columns, rows }: Grid, k: number): number {
  const [i, j] = [k % columns, Math.floor(k / columns)];
  let most = 0;
  for (let b = Math.max(0, j - 1); b <= Math.min(rows - 1, j + 1); b++)
    for (let a = Math.max(0, i - 1); a <= Math.min(columns - 1, i + 1); a++) {
      const here = extra[b * columns + a] ?? 0;
      if (here !== Infinity && here > most) most = here;
    }
  return most;
}

/** By cell what a metre in it costs beyond its length; Infinity where a pipe cannot be. */
function costsOf(request: RouteRequest, fences: readonly Solid[], grid: Grid): Float64Array {
  const { cell, columns, rows } = grid;
  const extra = new Float64Array(columns * rows);
  for (const { shape, perMetre } of request.areas)
    visitCells(grid, shape, 0, (k) => {
      extra[k] = (extra[k] ?? 0) + perMetre;
    });
  // as large as a cell may be, a way between two things is not lost
  const half = cell * Math.SQRT1_2;
  for (const { shape, clearance } of request.obstacles) {
    const need = clearance + request.diameter / 2 - half;
    visitCells(grid, shape, need, (k, p) => {
      if (!isNearEnds(request, p)) extra[k] = Infinity;
    });
  }
  // what lies beyond may be free
  for (const k of borderOf(grid)) extra[k] = 0;
  for (const { shape } of fences)
    visitCells(grid, shape, FENCE_CELLS * cell, (k) => {
      extra[k] = Infinity;
    });
  return extra;
}

function isNearEnds({ start, ends, freeEnds }: RouteRequest, p: Point): boolean {
  return distance(start.at, p) <= freeEnds || ends.some((end) => distanceToEnd(end, p) <= freeEnds);
}

/** Least costs over cells from all ends outwards. */
function costsToEnds({ ends }: RouteRequest, grid: Grid, extra: Float64Array): Float64Array {
  const { cell, columns, rows } = grid;
  const cost = new Float64Array(columns * rows).fill(Infinity);
  const queue = new FlatQueue<number>();
  const reach = (k: number, value: number) => {
    if (value >= (cost[k] ?? 0)) return;
    cost[k] = value;
    queue.push(k, value);
  };
  for (const { at } of ends) {
    const line = 'from' in at ? [at.from, at.to] : [at];
    visitCells(grid, { is: 'line', points: line, halfWidth: 0 }, cell, (k) => reach(k, 0));
  }
  const lengths = Float64Array.from(STEPS, ([dx, dy]) => cell * Math.hypot(dx, dy));
  // by index and without pairs: this loop is run some hundred thousand times
  for (
    let value = queue.peekValue(), k = queue.pop();
    k !== undefined;
    value = queue.peekValue(), k = queue.pop()
  ) {
    const reached = cost[k] ?? 0;
    if ((value ?? 0) > reached) continue;
    const i = k % columns;
    const j = (k - i) / columns;
    const here = extra[k] ?? 0;
    for (let n = 0; n < ACROSS.length; n++) {
      const a = i + (ACROSS[n] ?? 0);
      const b = j + (UP[n] ?? 0);
      if (a < 0 || b < 0 || a >= columns || b >= rows) continue;
      const next = b * columns + a;
      const there = extra[next] ?? 0;
      if (there !== Infinity) reach(next, reached + (lengths[n] ?? 0) * (1 + (here + there) / 2));
    }
  }
  return cost;
}
