import { DEPTH_M, type Point } from '@footmark/geometry';
import { toLeg } from './nearestLegs';

/** The deepest place of a leg within a ring: its share of the leg, 0 to 1, and the square of its depth (m²). */
export type LegDepth = { share: number; squared: number };

/**
 * The deepest place of the leg ab that lies within the ring (even-odd) and deeper than `deeperThan` (m); null without one. To within
 * `DEPTH_M`. The same as `polylineToRing` finds, which makes some thousand objects on the way: too many for every outline that a path
 * runs through.
 */
export function deepestOnLeg(
  a: Point,
  b: Point,
  ring: readonly Point[],
  deeperThan: number,
): LegDepth | null {
  const peak = { share: -1, squared: deeperThan * deeperThan };
  const cuts = cutsOf(a, b, ring);
  for (let i = 0; i + 1 < cuts.length; i++) {
    const [from, to] = [cuts[i] ?? 0, cuts[i + 1] ?? 1];
    if (!isInside(a, b, (from + to) / 2, ring)) continue;
    note(a, b, from, ring, peak);
    note(a, b, to, ring, peak);
    halve(a, b, from, to, ring, peak);
  }
  return peak.share < 0 ? null : peak;
}

/** Shares at which the leg may pass into the ring or out of it, with its ends, in order. */
function cutsOf(a: Point, b: Point, ring: readonly Point[]): number[] {
  const cuts = [0, 1];
  const [ux, uy] = [b.x - a.x, b.y - a.y];
  let c = ring.at(-1) ?? a;
  for (const d of ring) {
    const onC = ux * (c.y - a.y) - uy * (c.x - a.x);
    const onD = ux * (d.y - a.y) - uy * (d.x - a.x);
    if (onC > 0 !== onD > 0) {
      const along = onC / (onC - onD);
      const [x, y] = [c.x + along * (d.x - c.x) - a.x, c.y + along * (d.y - c.y) - a.y];
      const share = (x * ux + y * uy) / (ux * ux + uy * uy);
      if (share > 0 && share < 1) cuts.push(share);
    }
    c = d;
  }
  return cuts.length > 2 ? cuts.sort((s, t) => s - t) : cuts;
}

function isInside(a: Point, b: Point, share: number, ring: readonly Point[]): boolean {
  const x = a.x + share * (b.x - a.x);
  const y = a.y + share * (b.y - a.y);
  let inside = false;
  let c = ring.at(-1) ?? a;
  for (const d of ring) {
    if (c.y > y !== d.y > y && x < c.x + ((y - c.y) / (d.y - c.y)) * (d.x - c.x)) inside = !inside;
    c = d;
  }
  return inside;
}

function note(a: Point, b: Point, share: number, ring: readonly Point[], peak: LegDepth): void {
  const x = a.x + share * (b.x - a.x);
  const y = a.y + share * (b.y - a.y);
  let least = Infinity;
  let c = ring.at(-1) ?? a;
  for (const d of ring) {
    least = Math.min(least, toLeg(x, y, c.x, c.y, d.x, d.y));
    c = d;
  }
  if (least <= peak.squared) return;
  peak.share = share;
  peak.squared = least;
}

/**
 * Along a straight stretch the distance to each edge is convex, so that no place of it is deeper than the least, over the edges, of the
 * larger of the distances of its two ends. What that leaves room for is halved.
 */
function halve(a: Point, b: Point, from: number, to: number, ring: readonly Point[], peak: LegDepth): void {
  if (Math.sqrt(boundOn(a, b, from, to, ring)) <= Math.sqrt(peak.squared) + DEPTH_M) return;
  const middle = (from + to) / 2;
  note(a, b, middle, ring, peak);
  halve(a, b, from, middle, ring, peak);
  halve(a, b, middle, to, ring, peak);
}

/** Square (m²) of what no depth between two shares of the leg is more than. */
function boundOn(a: Point, b: Point, from: number, to: number, ring: readonly Point[]): number {
  const [ux, uy] = [b.x - a.x, b.y - a.y];
  let bound = Infinity;
  let c = ring.at(-1) ?? a;
  for (const d of ring) {
    const atFrom = toLeg(a.x + from * ux, a.y + from * uy, c.x, c.y, d.x, d.y);
    const atTo = toLeg(a.x + to * ux, a.y + to * uy, c.x, c.y, d.x, d.y);
    bound = Math.min(bound, Math.max(atFrom, atTo));
    c = d;
  }
  return bound;
}
