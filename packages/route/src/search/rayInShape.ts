import type { Point } from '@footmark/geometry';
import type { Shape } from '../request';
import { merged, type Span } from './spans';

/** A half line: from a point in the direction of a unit vector. */
export type Ray = { readonly from: Point; readonly ahead: Point };

/** The spans of a ray that lie in a shape or within `reach` (m) of it; negative metres are behind its start. Open: touching is outside. */
export function rayInShape(ray: Ray, shape: Shape, reach: number): readonly Span[] {
  switch (shape.is) {
    case 'circle':
      return inDisc(ray, shape.centre, shape.radius + reach);
    case 'line':
      return merged(inBand(ray, shape.points, false, shape.halfWidth + reach));
    case 'ring':
      return merged([...inRing(ray, shape.points), ...inBand(ray, shape.points, true, reach)]);
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

function inBand(ray: Ray, points: readonly Point[], closed: boolean, reach: number): Span[] {
  const found: Span[] = [];
  if (!(reach > 0)) return found;
  for (const [i, a] of points.entries()) {
    const b = points[i + 1] ?? (closed ? points[0] : undefined);
    const disc = inDisc(ray, a, reach);
    found.push(...disc);
    if (b !== undefined) found.push(...inSlab(ray, a, b, reach));
  }
  return found;
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

function inRing({ from, ahead }: Ray, points: readonly Point[]): Span[] {
  const cuts: number[] = [];
  let last = points.at(-1);
  for (const p of points) {
    if (last !== undefined) {
      // to which side of the ray's line either end lies; one on it counts as to the right, so that a corner is cut once
      const [sa, sb] = [side(from, ahead, last), side(from, ahead, p)];
      if (sa > 0 !== sb > 0) {
        const t = sa / (sa - sb);
        const [x, y] = [last.x + t * (p.x - last.x), last.y + t * (p.y - last.y)];
        cuts.push((x - from.x) * ahead.x + (y - from.y) * ahead.y);
      }
    }
    last = p;
  }
  cuts.sort((a, b) => a - b);
  const found: Span[] = [];
  for (let i = 0; i + 1 < cuts.length; i += 2) found.push([cuts[i] ?? 0, cuts[i + 1] ?? 0]);
  return found;
}

function side(from: Point, ahead: Point, p: Point): number {
  return (p.x - from.x) * ahead.y - (p.y - from.y) * ahead.x;
}
