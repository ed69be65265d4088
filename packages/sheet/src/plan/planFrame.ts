import { type Bounds, boundsOf } from '@footmark/drawing';
import { azimuthBetween, type Point, rotate } from '@footmark/geometry';
import type { Units } from '@footmark/site';
import { mmPerMetreOf, ruledScales } from './scales';

/** `fit`: the largest scale of a scale rule at which the whole yard is on the page; `largest`: the largest at all; else its denominator. */
export type AskedScale = 'fit' | 'largest' | number;

/** How a plan lies on paper: turned counter-clockwise by `turn` (rad), and what it then covers (m). */
export type PlanFrame = Readonly<{ turn: number; denominator: number; bounds: Bounds }>;

type Room = Readonly<{ width: number; height: number }>;

const QUARTER = Math.PI / 2;
/** A turn has to earn it: a plan stays as it is drawn unless it comes out larger by this factor at `largest`. */
const WORTH_A_TURN = 1.05;

/**
 * How points of a plan (m) lie in a room of paper (mm). Upright where that is as large as any other way; else with north to a side; else
 * along the yard. A scale that is asked for is kept, also where the yard then needs several pages. Null for no points.
 */
export function planFrame(
  points: readonly Point[],
  room: Room,
  asked: AskedScale,
  units: Units,
): PlanFrame | null {
  const hull = convexHull(points);
  const frames = turnsOf(hull).flatMap((turn) => {
    const bounds = boundsOf(hull.map((p) => rotate(p, turn)));
    return bounds === null ? [] : [{ turn, bounds, exact: exactDenominator(bounds, room) }];
  });
  const scaled = frames.map((f) => ({ ...f, denominator: denominatorOf(f.exact, asked, units) }));
  const [first] = scaled;
  if (first === undefined) return null;
  const best = scaled.reduce((kept, next) => (betterThan(next, kept, asked) ? next : kept), first);
  return { turn: best.turn, denominator: best.denominator, bounds: best.bounds };
}

type Tried = Readonly<{ exact: number; denominator: number; bounds: Bounds; turn: number }>;

function betterThan(next: Tried, kept: Tried, asked: AskedScale): boolean {
  if (asked === 'fit') return next.denominator < kept.denominator;
  // at a scale that is asked for a turn helps only where it brings the yard onto the page
  if (typeof asked === 'number') return kept.exact > asked && next.exact * WORTH_A_TURN < kept.exact;
  return next.exact * WORTH_A_TURN < kept.exact;
}

/** The scale at which it fills the room, as a denominator. */
function exactDenominator({ minX, minY, maxX, maxY }: Bounds, { width, height }: Room): number {
  return Math.max(1, ((maxX - minX) * 1000) / width, ((maxY - minY) * 1000) / height);
}

function denominatorOf(exact: number, asked: AskedScale, units: Units): number {
  if (typeof asked === 'number') return asked;
  if (asked === 'largest') return Math.ceil(exact * (1 - ROUNDING));
  return ruledScales(units).find((d) => d >= exact * (1 - ROUNDING)) ?? Math.ceil(exact);
}

/** A yard that was turned fills its room exactly but for this. */
const ROUNDING = 1e-6;

/** As drawn, north to the left and to the right, then along each side of the hull, upright before lying. */
function turnsOf(hull: readonly Point[]): readonly number[] {
  const sides = hull.map((p, i) => azimuthBetween(p, hull[(i + 1) % hull.length] ?? p) % QUARTER);
  const slants = [...new Set(sides.map((a) => Number(a.toFixed(9))))].filter((a) => a > 1e-3);
  const turned = slants.flatMap((a) => [a, a - QUARTER]);
  return [0, QUARTER, ...turned.sort((a, b) => Math.abs(a) - Math.abs(b))];
}

/** Andrew's monotone chain, counter-clockwise. */
function convexHull(points: readonly Point[]): readonly Point[] {
  const sorted = [...points].sort((a, b) => a.x - b.x || a.y - b.y);
  if (sorted.length < 3) return sorted;
  const half = (ordered: readonly Point[]) => {
    const chain: Point[] = [];
    for (const p of ordered) {
      while (chain.length > 1 && turnsRight(chain[chain.length - 2], chain[chain.length - 1], p)) chain.pop();
      chain.push(p);
    }
    return chain.slice(0, -1);
  };
  return [...half(sorted), ...half(sorted.toReversed())];
}

function turnsRight(a: Point | undefined, b: Point | undefined, c: Point): boolean {
  if (a === undefined || b === undefined) return false;
  return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x) <= 0;
}

/** Room (mm) for a piece of plan of that size. */
export function roomFor({ bounds, denominator }: PlanFrame): Room {
  const k = mmPerMetreOf(denominator);
  return { width: (bounds.maxX - bounds.minX) * k, height: (bounds.maxY - bounds.minY) * k };
}
