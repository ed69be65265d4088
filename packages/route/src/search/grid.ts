import { nearestOnSegment, type Point } from '@footmark/geometry';
import type { RouteEnd, RouteRequest, Shape } from '../request';
import { type Ray, rayInShape } from './rayInShape';
import { type Span, without } from './spans';

/** The ground goes on so far beside the straight way, in shares of it, and at least so far (m). */
const BESIDE = 0.6;
const BESIDE_M = 6;

export type Grid = {
  readonly left: number;
  readonly bottom: number;
  readonly cell: number;
  readonly columns: number;
  readonly rows: number;
};

/** Ground about the start and the ends, in about so many cells. */
export function gridOf({ start, ends }: RouteRequest, cells: number): Grid {
  const places = [start.at, ...ends.flatMap(({ at }) => ('from' in at ? [at.from, at.to] : [at]))];
  const xs = places.map((p) => p.x);
  const ys = places.map((p) => p.y);
  const span = Math.max(Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys));
  const beside = Math.max(BESIDE_M, BESIDE * span);
  const [left, bottom] = [Math.min(...xs) - beside, Math.min(...ys) - beside];
  const [width, height] = [Math.max(...xs) + beside - left, Math.max(...ys) + beside - bottom];
  const cell = Math.sqrt((width * height) / cells);
  return { left, bottom, cell, columns: Math.ceil(width / cell), rows: Math.ceil(height / cell) };
}

/** Visits the cells, by number and middle, whose middle lies in a shape or within `reach` (m) of it; less than 0: as deep in it. */
export function visitCells(
  { left, bottom, cell, columns, rows }: Grid,
  shape: Shape,
  reach: number,
  see: (k: number, middle: Point) => void,
): void {
  const { low, high } = heightsOf(shape);
  const first = Math.max(0, Math.floor((low - reach - bottom) / cell - 0.5));
  const last = Math.min(rows - 1, Math.ceil((high + reach - bottom) / cell - 0.5));
  for (let j = first; j <= last; j++) {
    const y = bottom + (j + 0.5) * cell;
    for (const [from, to] of rowInShape({ from: { x: left, y }, ahead: EAST }, shape, reach)) {
      const end = Math.min(columns - 1, Math.floor(to / cell - 0.5));
      for (let i = Math.max(0, Math.ceil(from / cell - 0.5)); i <= end; i++)
        see(j * columns + i, { x: left + (i + 0.5) * cell, y });
    }
  }
}

const EAST: Point = { x: 1, y: 0 };

function rowInShape(row: Ray, shape: Shape, reach: number): readonly Span[] {
  if (shape.is !== 'ring' || reach >= 0) return rayInShape(row, shape, reach);
  const edge: Shape = { is: 'line', points: closed(shape.points), halfWidth: -reach };
  return without(rayInShape(row, shape, 0), rayInShape(row, edge, 0));
}

const known = new WeakMap<readonly Point[], readonly Point[]>();

/** A ring's outline as a line, computed once for each. */
function closed(ring: readonly Point[]): readonly Point[] {
  const before = known.get(ring);
  const line = before ?? [...ring, ...ring.slice(0, 1)];
  if (before === undefined) known.set(ring, line);
  return line;
}

function heightsOf(shape: Shape): { readonly low: number; readonly high: number } {
  if (shape.is === 'circle') {
    const { centre, radius } = shape;
    return { low: centre.y - radius, high: centre.y + radius };
  }
  const wide = shape.is === 'line' ? shape.halfWidth : 0;
  let [low, high] = [Infinity, -Infinity];
  for (const { y } of shape.points) [low, high] = [Math.min(low, y), Math.max(high, y)];
  return { low: low - wide, high: high + wide };
}

/** From a place to the nearest of an end (m). */
export function distanceToEnd({ at }: Pick<RouteEnd, 'at'>, p: Point): number {
  if ('from' in at) return nearestOnSegment(p, at.from, at.to).distance;
  const [dx, dy] = [at.x - p.x, at.y - p.y];
  return Math.sqrt(dx * dx + dy * dy); // asked for each leg: Math.hypot takes several times as long
}

/** The cells along the edge of a grid: a way beyond it is no shorter than one through them. */
export function borderOf({ columns, rows }: Grid): readonly number[] {
  const found: number[] = [];
  for (let i = 0; i < columns; i++) found.push(i, (rows - 1) * columns + i);
  for (let j = 0; j < rows; j++) found.push(j * columns, j * columns + columns - 1);
  return found;
}
