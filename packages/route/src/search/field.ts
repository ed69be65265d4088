import { nearestOnSegment, type Point } from '@footmark/geometry';
import FlatQueue from 'flatqueue';
import type { RouteEnd, RouteRequest, Shape } from '../request';
import { shapeDistance } from './shapeDistance';
import type { Solid } from './solid';

/** About so many cells make up the ground that is looked at. */
const CELLS = 12_000;
/** The ground goes on so far beside the straight way, in shares of it, and at least so far (m). */
const BESIDE = 0.6;
const BESIDE_M = 6;
/** Ways over cells in sixteen directions are longer than the straight ones by up to this. */
const STRAIGHTER = 0.972;

const FENCE_CELLS = 1.2;

const STEPS: readonly (readonly [dx: number, dy: number])[] = [-2, -1, 0, 1, 2].flatMap((dx) =>
  [-2, -1, 0, 1, 2].flatMap((dy): (readonly [number, number])[] =>
    (dx !== 0 || dy !== 0) && Math.abs(dx) + Math.abs(dy) !== 4 && !isLong(dx, dy) ? [[dx, dy]] : [],
  ),
);

/** Two cells straight on are two steps. */
function isLong(dx: number, dy: number): boolean {
  return (Math.abs(dx) === 2 && dy === 0) || (Math.abs(dy) === 2 && dx === 0);
}

/**
 * What a way without any bends costs at least from a place to the nearest end, around all that must be kept clear of and over ground that costs:
 * over cells, so that it is a little less than the truth. 0 outside the ground that was looked at; Infinity where no way leads to an end.
 */
export type Field = (x: number, y: number) => number;

export function fieldOf(request: RouteRequest, fences: readonly Solid[] = []): Field {
  const grid = gridOf(request);
  const { left, bottom, cell, columns, rows } = grid;
  const extra = costsOf(request, fences, grid);
  const cost = costsToEnds(request, grid, extra);
  const most = extra.reduce((a, b) => (Number.isFinite(b) ? Math.max(a, b) : a), 0);
  const slack = (1 + most) * cell;
  return (x, y) => {
    const [i, j] = [Math.floor((x - left) / cell), Math.floor((y - bottom) / cell)];
    if (i < 0 || j < 0 || i >= columns || j >= rows) return 0;
    return Math.max(0, STRAIGHTER * (cost[j * columns + i] ?? 0) - slack);
  };
}

type Grid = {
  readonly left: number;
  readonly bottom: number;
  readonly cell: number;
  readonly columns: number;
  readonly rows: number;
};

function gridOf({ start, ends }: RouteRequest): Grid {
  const places = [start.at, ...ends.flatMap(({ at }) => ('from' in at ? [at.from, at.to] : [at]))];
  const xs = places.map((p) => p.x);
  const ys = places.map((p) => p.y);
  const span = Math.max(Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys));
  const beside = Math.max(BESIDE_M, BESIDE * span);
  const [left, bottom] = [Math.min(...xs) - beside, Math.min(...ys) - beside];
  const [width, height] = [Math.max(...xs) + beside - left, Math.max(...ys) + beside - bottom];
  const cell = Math.sqrt((width * height) / CELLS);
  return { left, bottom, cell, columns: Math.ceil(width / cell), rows: Math.ceil(height / cell) };
}

/** By cell what a metre in it costs beyond its length; Infinity where a pipe cannot be. */
function costsOf(request: RouteRequest, fences: readonly Solid[], grid: Grid): Float64Array {
  const { cell, columns, rows } = grid;
  const extra = new Float64Array(columns * rows);
  for (const { shape, perMetre } of request.areas)
    visit(grid, shape, 0, (k, p) => {
      if (shapeDistance(p, shape) < 0) extra[k] = (extra[k] ?? 0) + perMetre;
    });
  // as large as a cell may be, a way between two things is not lost
  const half = cell * Math.SQRT1_2;
  for (const { shape, clearance } of request.obstacles) {
    const need = clearance + request.diameter / 2 - half;
    if (need <= 0 && shape.is !== 'ring') continue;
    visit(grid, shape, Math.max(0, need), (k, p) => {
      if (shapeDistance(p, shape) < need && !isNearEnds(request, p)) extra[k] = Infinity;
    });
  }
  // wide enough that no step leads over one
  for (const { shape } of fences)
    visit(grid, shape, FENCE_CELLS * cell, (k, p) => {
      if (shapeDistance(p, shape) < FENCE_CELLS * cell) extra[k] = Infinity;
    });
  return extra;
}

function isNearEnds({ start, ends, freeEnds }: RouteRequest, p: Point): boolean {
  return distanceTo(start.at, p) <= freeEnds || ends.some(({ at }) => distanceTo(at, p) <= freeEnds);
}

function distanceTo(at: RouteEnd['at'], p: Point): number {
  return 'from' in at ? nearestOnSegment(p, at.from, at.to).distance : Math.hypot(at.x - p.x, at.y - p.y);
}

/** Visits the cells (number and middle) that may lie within `reach` of a shape. */
function visit(
  { left, bottom, cell, columns, rows }: Grid,
  shape: Shape,
  reach: number,
  see: (k: number, middle: Point) => void,
): void {
  const points = shape.is === 'circle' ? [shape.centre] : shape.points;
  const wide = reach + (shape.is === 'circle' ? shape.radius : shape.is === 'line' ? shape.halfWidth : 0);
  let [x0, x1, y0, y1] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const { x, y } of points)
    [x0, x1, y0, y1] = [Math.min(x0, x), Math.max(x1, x), Math.min(y0, y), Math.max(y1, y)];
  const from = (low: number, origin: number) => Math.max(0, Math.floor((low - wide - origin) / cell));
  const to = (high: number, origin: number, count: number) =>
    Math.min(count - 1, Math.floor((high + wide - origin) / cell));
  for (let j = from(y0, bottom); j <= to(y1, bottom, rows); j++)
    for (let i = from(x0, left); i <= to(x1, left, columns); i++)
      see(j * columns + i, { x: left + (i + 0.5) * cell, y: bottom + (j + 0.5) * cell });
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
    visit(grid, { is: 'line', points: line, halfWidth: 0 }, cell, (k, p) => {
      if (distanceTo(at, p) <= cell) reach(k, 0);
    });
  }
  const lengths = STEPS.map(([dx, dy]) => cell * Math.hypot(dx, dy));
  for (
    let value = queue.peekValue(), k = queue.pop();
    k !== undefined;
    value = queue.peekValue(), k = queue.pop()
  ) {
    if ((value ?? 0) > (cost[k] ?? 0)) continue;
    const [i, j] = [k % columns, Math.floor(k / columns)];
    const here = extra[k] ?? 0;
    for (const [n, [dx, dy]] of STEPS.entries()) {
      const [a, b] = [i + dx, j + dy];
      if (a < 0 || b < 0 || a >= columns || b >= rows) continue;
      const next = b * columns + a;
      const there = extra[next] ?? 0;
      if (there === Infinity) continue;
      reach(next, (cost[k] ?? 0) + (lengths[n] ?? 0) * (1 + (here + there) / 2));
    }
  }
  return cost;
}
