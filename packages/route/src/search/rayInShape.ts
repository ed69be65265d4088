import type { Point } from '@footmark/geometry';
import type { Shape } from '../request';
import { type Run, runsOf } from './outlineRuns';
import { merged, type Span } from './spans';

/** A half line: from a point in the direction of a unit vector. */
export type Ray = { readonly from: Point; readonly ahead: Point };

/** The spans of a ray that lie in a shape or within `reach` (m) of it; negative metres are behind its start. Open: touching is outside. */
export function rayInShape(ray: Ray, shape: Shape, reach: number): readonly Span[] {
  return spansIn(ray, shape, reach, -Infinity);
}

/** Those that are not wholly behind its start; the others may be among them. */
export function spansAhead(ray: Ray, shape: Shape, reach: number): readonly Span[] {
  return spansIn(ray, shape, reach, 0);
}

/** `since`: what ends before so many metres may be left out. */
function spansIn(ray: Ray, shape: Shape, reach: number, since: number): readonly Span[] {
  switch (shape.is) {
    case 'circle':
      return inDisc(ray, shape.centre, shape.radius + reach);
    case 'line':
      return merged(
        inBand(ray, { points: shape.points, closed: false, reach: shape.halfWidth + reach, since }),
      );
    case 'ring':
      return merged([
        ...inRing(ray, shape.points),
        ...inBand(ray, { points: shape.points, closed: true, reach, since }),
      ]);
  }
}

function inDisc({ from, ahead }: Ray, centre: Point, radius: number): readonly Span[] {
  const [dx, dy] = [centre.x - from.x, centre.y - from.y];
  const foot = dx * ahead.x + dy * ahead.y;
  const aside = dx * ahead.y - dy * ahead.x;
  if (Math.abs(aside) >= radius) return [];
  const half = Math.sqrt((radius - aside) * (radius + aside));
  return [[foot - half, foot + half]];
}

type Band = {
  readonly points: readonly Point[];
  readonly closed: boolean;
  readonly reach: number;
  readonly since: number;
};

function inBand(ray: Ray, { points, closed, reach, since }: Band): Span[] {
  const found: Span[] = [];
  if (!(reach > 0)) return found;
  // what follows along an outline mostly touches what was before
  let [low, high] = [Infinity, -Infinity];
  const add = (spans: readonly Span[]) => {
    for (const [from, to] of spans) {
      if (from > high || to < low) {
        if (high > low) found.push([low, high]);
        [low, high] = [from, to];
      } else [low, high] = [Math.min(low, from), Math.max(high, to)];
    }
  };
  for (const run of runsOf(points)) {
    if (isAside(ray, run, reach) || furthestAlong(ray, run) + reach < since) continue;
    for (let i = run.first; i < run.end; i++) {
      const a = points[i];
      if (a === undefined) break;
      const b = points[i + 1] ?? (closed ? points[0] : undefined);
      const [sa, sb] = [side(ray, a), b === undefined ? Infinity : side(ray, b)];
      if (Math.abs(sa) < reach) add(inDisc(ray, a, reach));
      if (b !== undefined && Math.min(sa, sb) < reach && Math.max(sa, sb) > -reach)
        add(inSlab(ray, a, b, reach));
    }
  }
  if (high > low) found.push([low, high]);
  return found;
}

/** No place of a run lies further (m) along a ray. */
function furthestAlong({ from, ahead }: Ray, { low, high }: Run): number {
  const [x, y] = [ahead.x > 0 ? high.x : low.x, ahead.y > 0 ? high.y : low.y];
  return (x - from.x) * ahead.x + (y - from.y) * ahead.y;
}

/** Whether a run lies to one side of a ray's whole line, and by as much as `reach`. */
function isAside({ from, ahead }: Ray, { low, high }: Run, reach: number): boolean {
  const [x0, x1] = ahead.y > 0 ? [low.x, high.x] : [high.x, low.x];
  const [y0, y1] = ahead.x > 0 ? [high.y, low.y] : [low.y, high.y];
  const least = (x0 - from.x) * ahead.y - (y0 - from.y) * ahead.x;
  const most = (x1 - from.x) * ahead.y - (y1 - from.y) * ahead.x;
  return least > reach || most < -reach;
}

/** The rectangle beside a segment, without the half discs at its ends. */
function inSlab({ from, ahead }: Ray, a: Point, b: Point, reach: number): readonly Span[] {
  const [ex, ey] = [b.x - a.x, b.y - a.y];
  const length = Math.hypot(ex, ey);
  if (length === 0) return [];
  const [ux, uy] = [ex / length, ey / length];
  const [px, py] = [from.x - a.x, from.y - a.y];
  const along = between(px * ux + py * uy, ahead.x * ux + ahead.y * uy, 0, length);
  const across = between(px * uy - py * ux, ahead.x * uy - ahead.y * ux, -reach, reach);
  if (along === null || across === null) return [];
  const [start, end] = [Math.max(along[0], across[0]), Math.min(along[1], across[1])];
  return end > start ? [[start, end]] : [];
}

/** Where `at + t * rate` lies strictly between two values. */
function between(at: number, rate: number, low: number, high: number): Span | null {
  if (Math.abs(rate) < 1e-12) return at > low && at < high ? [-Infinity, Infinity] : null;
  const [a, b] = [(low - at) / rate, (high - at) / rate];
  return a < b ? [a, b] : [b, a];
}

function inRing(ray: Ray, points: readonly Point[]): Span[] {
  const { from, ahead } = ray;
  const cuts: number[] = [];
  for (const run of runsOf(points)) {
    if (isAside(ray, run, 0)) continue;
    for (let i = run.first; i < run.end; i++) {
      const [a, b] = [points[i], points[i + 1] ?? points[0]];
      if (a === undefined || b === undefined) break;
      // to which side of the ray's line either end lies; one on it counts as to the left, so that a corner is cut once
      const [sa, sb] = [side(ray, a), side(ray, b)];
      if (sa > 0 === sb > 0) continue;
      const t = sa / (sa - sb);
      const [x, y] = [a.x + t * (b.x - a.x), a.y + t * (b.y - a.y)];
      cuts.push((x - from.x) * ahead.x + (y - from.y) * ahead.y);
    }
  }
  cuts.sort((a, b) => a - b);
  const found: Span[] = [];
  for (let i = 0; i + 1 < cuts.length; i += 2) found.push([cuts[i] ?? 0, cuts[i + 1] ?? 0]);
  return found;
}

/** How far (m) to the right of a ray's line a point lies. */
function side({ from, ahead }: Ray, p: Point): number {
  return (p.x - from.x) * ahead.y - (p.y - from.y) * ahead.x;
}
