import type { Point } from '@footmark/geometry';
import FlatQueue from 'flatqueue';
import type { Obstacle, RouteRequest } from '../request';
import { borderOf, type Grid, gridOf, visitCells } from './grid';
import { shapeDistance } from './shapeDistance';
import { solidOf, zoneOf } from './solid';

/** So many cells make up the ground: of a yard of 30 m each is about 0.2 m wide. */
const CELLS = 120_000;

/** What alone keeps the start from the ends, and with which clearance (m) it would no more, as far as cells tell; below 0: only without it. */
export type Barrier = { readonly obstacle: Obstacle; readonly clearance: number };

/**
 * Whether ground leads from the start to an end at all. Each cell is free when any place in it may be: what is apart here is apart in truth.
 * `about`: the obstacles around the start's ground; `barriers`: first the one that would have to give least.
 */
export type Ground =
  | { readonly is: 'joined' }
  | {
      readonly is: 'apart';
      readonly about: readonly Obstacle[];
      readonly barriers: readonly Barrier[];
    };

export function groundOf(request: RouteRequest): Ground {
  const cells = cellsOf(request);
  const ends = request.ends.flatMap((end) => cellsAt(cells, zoneOf(end)));
  const start = filled(cells, cellsAt(cells, { is: 'circle', centre: request.start.at, radius: 0 }));
  if (ends.some((k) => start[k] === 1)) return { is: 'joined' };
  const beyond = filled(cells, ends);
  const [about, opposite] = [bordering(cells, start), bordering(cells, beyond)];
  const barriers = request.obstacles.flatMap((obstacle, index): Barrier[] => {
    if (!about.has(index) || !opposite.has(index)) return [];
    const room = roomBeside(cells, { obstacle, index, start, beyond });
    return room === null ? [] : [{ obstacle, clearance: room + cells.half - request.diameter / 2 }];
  });
  return {
    is: 'apart',
    about: request.obstacles.filter((_, index) => about.has(index)),
    barriers: barriers.sort((a, b) => given(a) - given(b)),
  };
}

/** The share of its clearance that an obstacle would have to give. */
function given({ obstacle, clearance }: Barrier): number {
  return clearance < 0 ? Infinity : 1 - clearance / obstacle.clearance;
}

/** `cover`: by cell FREE, or the number of the one obstacle that no pipe in it keeps clear of, or BY_MANY. */
type Cells = { readonly grid: Grid; readonly half: number; readonly cover: Int32Array };

const FREE = -1;
const BY_MANY = -2;

function cellsOf(request: RouteRequest): Cells {
  const grid = gridOf(request, CELLS);
  const half = grid.cell * Math.SQRT1_2;
  const cover = new Int32Array(grid.columns * grid.rows).fill(FREE);
  for (const [index, obstacle] of request.obstacles.entries()) {
    const { shape, need, ends } = solidOf(request, obstacle);
    const isWaived = (p: Point) =>
      ends.some(
        (end) =>
          shapeDistance(p, end.zone) <= request.freeEnds + half &&
          (end.need < 0 || shapeDistance(p, shape) >= end.need - half),
      );
    visitCells(grid, shape, need - half, (k, p) => {
      if (!isWaived(p)) cover[k] = cover[k] === FREE ? index : BY_MANY;
    });
  }
  // what lies beyond may be free
  for (const k of borderOf(grid)) cover[k] = FREE;
  return { grid, half, cover };
}

/** The cells that a point or a piece lies in, and those beside them. */
function cellsAt({ grid }: Cells, zone: ReturnType<typeof zoneOf>): readonly number[] {
  const found: number[] = [];
  visitCells(grid, zone, grid.cell, (k) => found.push(k));
  return found;
}

/** All free cells to which free cells lead. */
function filled({ grid, cover }: Cells, from: readonly number[]): Uint8Array {
  const seen = new Uint8Array(cover.length);
  const open: number[] = [];
  const reach = (k: number) => {
    if (cover[k] !== FREE || seen[k] === 1) return;
    seen[k] = 1;
    open.push(k);
  };
  from.forEach(reach);
  const { columns, rows } = grid;
  // as `besideOf`, without a list for each of so many cells
  for (let k = open.pop(); k !== undefined; k = open.pop()) {
    const i = k % columns;
    const j = (k - i) / columns;
    if (i > 0) reach(k - 1);
    if (i + 1 < columns) reach(k + 1);
    if (j > 0) reach(k - columns);
    if (j + 1 < rows) reach(k + columns);
  }
  return seen;
}

function besideOf({ columns, rows }: Grid, k: number): readonly number[] {
  const [i, j] = [k % columns, Math.floor(k / columns)];
  const found: number[] = [];
  if (i > 0) found.push(k - 1);
  if (i + 1 < columns) found.push(k + 1);
  if (j > 0) found.push(k - columns);
  if (j + 1 < rows) found.push(k + columns);
  return found;
}

/** The numbers of the obstacles with a cell that they alone cover beside some ground. */
function bordering({ grid, cover }: Cells, ground: Uint8Array): ReadonlySet<number> {
  const found = new Set<number>();
  for (const [k, by] of cover.entries())
    if (by >= 0 && !found.has(by) && besideOf(grid, k).some((n) => ground[n] === 1)) found.add(by);
  return found;
}

type Between = {
  readonly obstacle: Obstacle;
  readonly index: number;
  readonly start: Uint8Array;
  readonly beyond: Uint8Array;
};

/** On the way through an obstacle's own cells that stays furthest from it: how far (m) that is; null when none leads through. */
function roomBeside({ grid, cover }: Cells, { obstacle, index, start, beyond }: Between): number | null {
  const queue = new FlatQueue<number>();
  const seen = new Uint8Array(cover.length);
  const reach = (k: number, room: number) => {
    const isFree = cover[k] === FREE;
    if (seen[k] === 1 || !(isFree || cover[k] === index)) return;
    seen[k] = 1;
    queue.push(k, -(isFree ? room : Math.min(room, shapeDistance(middleOf(grid, k), obstacle.shape))));
  };
  for (const [k, is] of start.entries()) {
    if (is === 0) continue;
    seen[k] = 1;
    for (const n of besideOf(grid, k)) if (start[n] === 0) reach(n, Infinity);
  }
  for (;;) {
    const room = -(queue.peekValue() ?? 0);
    const k = queue.pop();
    if (k === undefined) return null;
    if (beyond[k] === 1) return room;
    for (const n of besideOf(grid, k)) reach(n, room);
  }
}

function middleOf({ left, bottom, cell, columns }: Grid, k: number): Point {
  return {
    x: left + ((k % columns) + 0.5) * cell,
    y: bottom + (Math.floor(k / columns) + 0.5) * cell,
  };
}
