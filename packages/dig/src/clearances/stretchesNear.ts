import { cross, distance, dot, type Point, scale, subtract } from '@footmark/geometry';
import type { PathLegs } from './pathLegs';

/** A piece of a path by stations (plan m). */
export type NearStretch = { readonly from: number; readonly to: number };

/**
 * The pieces of a path on which a trench of half a width (m) comes within `reach` (m) of a line: exact for each straight leg of both, in
 * order and merged. What lies outside of a bend, between the square ends of two legs, is left out.
 */
export function stretchesNear(
  { points, stations }: Pick<PathLegs, 'points' | 'stations'>,
  halfWidth: number,
  line: readonly Point[],
  reach: number,
): readonly NearStretch[] {
  const found: NearStretch[] = [];
  for (let i = 0; i + 1 < points.length; i++) {
    const [a, b] = [points[i], points[i + 1]];
    const [from, to] = [stations[i], stations[i + 1]];
    if (a === undefined || b === undefined || from === undefined || to === undefined) continue;
    const length = distance(a, b);
    const perMetre = (to - from) / length;
    for (let j = 0; j + 1 < line.length; j++) {
      const [c, d] = [line[j], line[j + 1]];
      if (c === undefined || d === undefined) continue;
      const span = spanWithin(a, b, length, halfWidth, c, d, reach);
      if (span === null) continue;
      found.push({ from: from + span[0] * perMetre, to: from + span[1] * perMetre });
    }
  }
  return merged(found);
}

/**
 * From and to along the leg ab (m) where its strip meets all that lies within `reach` of the leg cd; null where it does not. Both are
 * convex, so what they share is, and its ends along the leg lie either on an edge of the strip or at an end of the rounded leg.
 */
function spanWithin(
  a: Point,
  b: Point,
  length: number,
  halfWidth: number,
  c: Point,
  d: Point,
  reach: number,
): readonly [number, number] | null {
  const along = scale(subtract(b, a), 1 / length);
  const inFrame = (p: Point): Point => ({ x: dot(along, subtract(p, a)), y: cross(along, subtract(p, a)) });
  const ends = [inFrame(c), inFrame(d)] as const;
  const reached: number[] = [];
  for (const { x, y } of ends) if (Math.abs(y) <= halfWidth) reached.push(x - reach, x + reach);
  for (const y of [-halfWidth, halfWidth]) reached.push(...levelCuts(ends, reach, y));
  if (reached.length === 0) return null;
  const from = Math.max(0, Math.min(...reached));
  const to = Math.min(length, Math.max(...reached));
  return to > from ? [from, to] : null;
}

/** Where the level y passes through the discs at the ends of a leg and the rectangle between them. */
function levelCuts([c, d]: readonly [Point, Point], reach: number, y: number): readonly number[] {
  const cuts: number[] = [];
  for (const end of [c, d]) {
    const half = Math.sqrt(Math.max(0, reach ** 2 - (y - end.y) ** 2));
    if (half > 0) cuts.push(end.x - half, end.x + half);
  }
  const length = distance(c, d);
  if (length === 0) return cuts;
  const out = scale({ x: -(d.y - c.y), y: d.x - c.x }, reach / length);
  const corners = [
    { x: c.x + out.x, y: c.y + out.y },
    { x: d.x + out.x, y: d.y + out.y },
    { x: d.x - out.x, y: d.y - out.y },
    { x: c.x - out.x, y: c.y - out.y },
  ];
  for (const [i, p] of corners.entries()) {
    const q = corners[(i + 1) % corners.length] ?? p;
    if (p.y > y !== q.y > y) cuts.push(p.x + ((y - p.y) / (q.y - p.y)) * (q.x - p.x));
  }
  return cuts;
}

function merged(stretches: NearStretch[]): readonly NearStretch[] {
  stretches.sort((a, b) => a.from - b.from);
  const whole: NearStretch[] = [];
  for (const stretch of stretches) {
    const last = whole.at(-1);
    if (last === undefined || stretch.from > last.to) whole.push(stretch);
    else whole[whole.length - 1] = { from: last.from, to: Math.max(last.to, stretch.to) };
  }
  return whole;
}
