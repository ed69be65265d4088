import type { Point } from '@footmark/geometry';
import type { Shape } from '@footmark/route';

// Where a ray goes through a shape made wider, and how far a point is from one: written for the slow search alone, so that it shares no
// error with the search or the checker.

/** From a place in a direction of length 1. */
export type Ray = { readonly x: number; readonly y: number; readonly ux: number; readonly uy: number };
/** From and to along a ray; negative behind its start. */
export type Stretch = readonly [number, number];

/** Not Math.hypot, which is several times slower. */
function length(x: number, y: number): number {
  return Math.sqrt(x * x + y * y);
}

/** To the edge of a shape, negative inside. */
export function awayFrom(x: number, y: number, shape: Shape): number {
  switch (shape.is) {
    case 'circle':
      return length(x - shape.centre.x, y - shape.centre.y) - shape.radius;
    case 'ring': {
      let away = Infinity;
      let turns = 0;
      for (const [a, b] of edges(shape)) {
        away = Math.min(away, toEdge(x, y, a, b));
        // how often the ring goes round the point
        turns += Math.atan2(
          (a.x - x) * (b.y - y) - (a.y - y) * (b.x - x),
          (a.x - x) * (b.x - x) + (a.y - y) * (b.y - y),
        );
      }
      return Math.abs(turns) > Math.PI ? -away : away;
    }
    case 'line':
      return Math.min(...edges(shape).map(([a, b]) => toEdge(x, y, a, b))) - shape.halfWidth;
  }
}

/** Where a ray first comes nearer than `by` to a shape that it starts outside of; Infinity for never. */
export function firstWithin(ray: Ray, shape: Shape, by: number): number {
  if (shape.is === 'circle') return entering(throughCircle(ray, shape.centre, shape.radius + by));
  const reach = shape.is === 'line' ? by + shape.halfWidth : by;
  let first = Infinity;
  for (const [a, b] of edges(shape)) {
    first = Math.min(first, entering(throughCapsule(ray, a, b, reach)));
  }
  return first;
}

/** The stretches of a ray inside a shape, apart from each other. */
export function inside(ray: Ray, shape: Shape): readonly Stretch[] {
  switch (shape.is) {
    case 'circle': {
      const through = throughCircle(ray, shape.centre, shape.radius);
      return through === null ? [] : [through];
    }
    case 'ring': {
      const meets = edges(shape)
        .map(([a, b]) => meeting(ray, a, b))
        .filter((t) => t !== null)
        .sort((a, b) => a - b);
      return meets.flatMap((t, i): Stretch[] => (i % 2 === 0 ? [[t, meets[i + 1] ?? t]] : []));
    }
    case 'line':
      return joined(
        edges(shape)
          .map(([a, b]) => throughCapsule(ray, a, b, shape.halfWidth))
          .filter((s) => s !== null),
      );
  }
}

type Cornered = Exclude<Shape, { is: 'circle' }>;
type Edge = readonly [Point, Point];

const known = new WeakMap<Cornered, readonly Edge[]>();

function edges(shape: Cornered): readonly Edge[] {
  const before = known.get(shape);
  if (before !== undefined) return before;
  const made = shape.points.flatMap((a, i): Edge[] => {
    const b = shape.points[i + 1] ?? (shape.is === 'ring' ? shape.points[0] : undefined);
    return b === undefined ? [] : [[a, b]];
  });
  known.set(shape, made);
  return made;
}

function toEdge(x: number, y: number, a: Point, b: Point): number {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const long = length(dx, dy);
  const along = ((x - a.x) * dx + (y - a.y) * dy) / long;
  if (along <= 0) return length(x - a.x, y - a.y);
  if (along >= long) return length(x - b.x, y - b.y);
  return Math.abs((x - a.x) * dy - (y - a.y) * dx) / long;
}

function entering(through: Stretch | null): number {
  return through === null || through[1] <= 0 ? Infinity : Math.max(0, through[0]);
}

function throughCircle({ x, y, ux, uy }: Ray, centre: Point, radius: number): Stretch | null {
  const [mx, my] = [centre.x - x, centre.y - y];
  const along = mx * ux + my * uy;
  const across = mx * uy - my * ux;
  if (Math.abs(across) >= radius) return null;
  const half = Math.sqrt(radius * radius - across * across);
  return [along - half, along + half];
}

/** An edge made round and `radius` wide on either side is convex: one stretch. */
function throughCapsule(ray: Ray, a: Point, b: Point, radius: number): Stretch | null {
  const parts = [throughCircle(ray, a, radius), throughCircle(ray, b, radius), throughBox(ray, a, b, radius)];
  let [from, to] = [Infinity, -Infinity];
  for (const part of parts) {
    if (part === null) continue;
    from = Math.min(from, part[0]);
    to = Math.max(to, part[1]);
  }
  return from < to ? [from, to] : null;
}

function throughBox({ x, y, ux, uy }: Ray, a: Point, b: Point, radius: number): Stretch | null {
  const long = length(b.x - a.x, b.y - a.y);
  const [ex, ey] = [(b.x - a.x) / long, (b.y - a.y) / long];
  const along = between((x - a.x) * ex + (y - a.y) * ey, ux * ex + uy * ey, [0, long]);
  const across = between((x - a.x) * ey - (y - a.y) * ex, ux * ey - uy * ex, [-radius, radius]);
  if (along === null || across === null) return null;
  const [from, to] = [Math.max(along[0], across[0]), Math.min(along[1], across[1])];
  return from < to ? [from, to] : null;
}

/** When a value that starts at `at` and grows by `speed` is between two others. */
function between(at: number, speed: number, [least, most]: Stretch): Stretch | null {
  if (Math.abs(speed) < 1e-12) return at > least && at < most ? [-Infinity, Infinity] : null;
  const [s, t] = [(least - at) / speed, (most - at) / speed];
  return s < t ? [s, t] : [t, s];
}

function meeting({ x, y, ux, uy }: Ray, a: Point, b: Point): number | null {
  const sideA = ux * (a.y - y) - uy * (a.x - x);
  const sideB = ux * (b.y - y) - uy * (b.x - x);
  if (sideA > 0 === sideB > 0) return null;
  const t = sideA / (sideA - sideB);
  return (a.x + t * (b.x - a.x) - x) * ux + (a.y + t * (b.y - a.y) - y) * uy;
}

function joined(stretches: readonly Stretch[]): readonly Stretch[] {
  const out: Stretch[] = [];
  for (const next of [...stretches].sort((a, b) => a[0] - b[0])) {
    const last = out.at(-1);
    if (last !== undefined && next[0] <= last[1]) out[out.length - 1] = [last[0], Math.max(last[1], next[1])];
    else out.push(next);
  }
  return out;
}
