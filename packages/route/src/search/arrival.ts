import { normalizeAzimuth, type Point } from '@footmark/geometry';
import type { Headings, RouteEnd } from '../request';
import type { Direction } from './direction';
import { ON_LINE_M } from './tolerances';

/** A heading may miss an allowed one by so much (rad): rounding. */
const ROUNDING_RAD = 1e-7;

export function mayArrive({ headings }: RouteEnd, heading: number): boolean {
  return headings === null || headings.some((allowed) => isWithin(allowed, heading));
}

function isWithin({ from, to }: Headings, heading: number): boolean {
  const wide = from === to ? 0 : normalizeAzimuth(to - from) || 2 * Math.PI;
  const into = normalizeAzimuth(heading - from + ROUNDING_RAD);
  return into <= wide + 2 * ROUNDING_RAD;
}

/** How far (m) along a ray an end lies; null for one that is not on it. */
export function alongToEnd(from: Point, direction: Direction, { at }: RouteEnd): number | null {
  if ('from' in at) return alongToPiece(from, direction, at);
  const [dx, dy] = [at.x - from.x, at.y - from.y];
  const aside = dx * direction.right.x + dy * direction.right.y;
  return Math.abs(aside) <= ON_LINE_M ? dx * direction.ahead.x + dy * direction.ahead.y : null;
}

function alongToPiece(
  from: Point,
  { ahead, right }: Direction,
  piece: { readonly from: Point; readonly to: Point },
): number | null {
  const side = (p: Point) => (p.x - from.x) * right.x + (p.y - from.y) * right.y;
  const along = (p: Point) => (p.x - from.x) * ahead.x + (p.y - from.y) * ahead.y;
  const [a, b] = [side(piece.from), side(piece.to)];
  if (Math.abs(a) <= ON_LINE_M && Math.abs(b) <= ON_LINE_M) {
    // along the piece itself: at the end of it that comes first
    const ends = [along(piece.from), along(piece.to)].filter((t) => t >= 0);
    return ends.length === 0 ? null : Math.min(...ends);
  }
  if (Math.min(a, b) > ON_LINE_M || Math.max(a, b) < -ON_LINE_M) return null;
  const share = Math.min(1, Math.max(0, a / (a - b)));
  return along(piece.from) + share * (along(piece.to) - along(piece.from));
}

/** The lines in a direction through an end, by how far to the right of the frame's origin they lie. */
export function tracksToEnd({ at }: RouteEnd, { right }: Direction): readonly number[] {
  return ('from' in at ? [at.from, at.to] : [at]).map((p) => p.x * right.x + p.y * right.y);
}

/** An end `short` metres before itself for a leg in a direction: there its last bend is, when the last leg is no longer than its fitting. */
export function before(end: RouteEnd, { ahead }: Direction, short: number): RouteEnd {
  const moved = ({ x, y }: Point) => ({ x: x - short * ahead.x, y: y - short * ahead.y });
  const { at } = end;
  return { ...end, at: 'from' in at ? { from: moved(at.from), to: moved(at.to) } : moved(at) };
}
