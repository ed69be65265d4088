import type { Point } from '@footmark/geometry';
import type { DerivedFeature } from '@footmark/site';
import type { LegTable } from './legTable';

/**
 * Where a subject and an outline come nearest to each other: the leg of each, half the width of the former (m), the distance of their
 * lines (m, 0 where they cross) and the place on each.
 */
export type NearestLegs = {
  own: number;
  other: number;
  halfWidth: number;
  distance: number;
  fromX: number;
  fromY: number;
  atX: number;
  atY: number;
};

export type Bounds = DerivedFeature['bounds'];

/**
 * Writes to `found` the pair of legs between which the distance, less the half width of the table's leg, is least; false when that is not
 * below `within` (m). `closed` adds the outline's leg from its last point to the first. Boxes and legs whose own boxes lie further off than
 * the best so far are passed over.
 * Numbers are taken out of the arrays without a check, as every index is one of theirs, and nothing is allocated: it runs for every thing
 * on a site whenever one moves.
 */
export function nearestLegs(
  table: LegTable,
  outline: readonly Point[],
  closed: boolean,
  bounds: Bounds,
  within: number,
  found: NearestLegs,
): boolean {
  const { legs, boxes, starts, halfWidths } = table;
  const { minX: lowX, minY: lowY, maxX: highX, maxY: highY } = bounds;
  const count = halfWidths.length;
  const corners = outline.length;
  const others = closed || corners === 1 ? corners : corners - 1;
  let best = within;
  let own = -1;
  let other = 0;

  let first = 0;
  for (let k = 0, least = Infinity; k < count; k++) {
    const gap = boxGap(boxes, k, lowX, lowY, highX, highY);
    if (gap < least) {
      least = gap;
      first = k;
    }
  }
  for (let turn = 0; turn < count; turn++) {
    // the nearest box first, then the others in order
    const k = turn === 0 ? first : turn <= first ? turn - 1 : turn;
    const half = halfWidths[k] as number;
    const reach = best + half;
    let squared = reach * reach;
    if (reach <= 0 || boxGap(boxes, k, lowX, lowY, highX, highY) >= squared) continue;
    const end = starts[k + 1] as number;
    for (let i = starts[k] as number; i < end; i++) {
      const ax = legs[4 * i] as number;
      const ay = legs[4 * i + 1] as number;
      const bx = legs[4 * i + 2] as number;
      const by = legs[4 * i + 3] as number;
      if (apart(ax, bx, lowX, highX) + apart(ay, by, lowY, highY) >= squared) continue;
      for (let j = 0; j < others; j++) {
        const c = outline[j] as Point;
        const d = outline[j + 1 < corners ? j + 1 : 0] as Point;
        if (apart(ax, bx, c.x, d.x) + apart(ay, by, c.y, d.y) >= squared) continue;
        const away =
          corners === 1 ? toLeg(c.x, c.y, ax, ay, bx, by) : legsApart(ax, ay, bx, by, c.x, c.y, d.x, d.y);
        if (away >= squared) continue;
        squared = away;
        best = Math.sqrt(away) - half;
        own = i;
        other = j;
        found.halfWidth = half;
      }
    }
  }
  if (own < 0) return false;
  found.own = own;
  found.other = other;
  placesOf(legs, own, outline, other, found);
  return true;
}

/** Square of how far two spans on one axis are apart, 0 where they overlap. The ends of each come in either order. */
function apart(a: number, b: number, c: number, d: number): number {
  const gap = Math.max(Math.min(a, b) - Math.max(c, d), Math.min(c, d) - Math.max(a, b));
  return gap > 0 ? gap * gap : 0;
}

/** Squared distance between two boxes, 0 where they meet. */
function boxGap(
  boxes: Float64Array,
  k: number,
  lowX: number,
  lowY: number,
  highX: number,
  highY: number,
): number {
  const dx = Math.max(lowX - (boxes[4 * k + 2] as number), (boxes[4 * k] as number) - highX);
  const dy = Math.max(lowY - (boxes[4 * k + 3] as number), (boxes[4 * k + 1] as number) - highY);
  return (dx > 0 ? dx * dx : 0) + (dy > 0 ? dy * dy : 0);
}

/** Squared distance between two legs, 0 where they cross. */
function legsApart(
  ax: number,
  ay: number,
  bx: number,
  by: number,
  cx: number,
  cy: number,
  dx: number,
  dy: number,
): number {
  if (legsCross(ax, ay, bx, by, cx, cy, dx, dy)) return 0;
  return Math.min(
    toLeg(ax, ay, cx, cy, dx, dy),
    toLeg(bx, by, cx, cy, dx, dy),
    toLeg(cx, cy, ax, ay, bx, by),
    toLeg(dx, dy, ax, ay, bx, by),
  );
}

/** Whether each leg has its ends on both sides of the other. */
function legsCross(
  ax: number,
  ay: number,
  bx: number,
  by: number,
  cx: number,
  cy: number,
  dx: number,
  dy: number,
): boolean {
  const c = (bx - ax) * (cy - ay) - (by - ay) * (cx - ax);
  const d = (bx - ax) * (dy - ay) - (by - ay) * (dx - ax);
  if (c * d >= 0) return false;
  const a = (dx - cx) * (ay - cy) - (dy - cy) * (ax - cx);
  const b = (dx - cx) * (by - cy) - (dy - cy) * (bx - cx);
  return a * b < 0;
}

/** Share of the leg ab at which it is nearest to a point, 0 to 1. */
function shareOf(px: number, py: number, ax: number, ay: number, bx: number, by: number): number {
  const ux = bx - ax;
  const uy = by - ay;
  const squared = ux * ux + uy * uy;
  return squared > 0 ? Math.min(1, Math.max(0, ((px - ax) * ux + (py - ay) * uy) / squared)) : 0;
}

/** Squared distance from a point to the leg ab. */
export function toLeg(px: number, py: number, ax: number, ay: number, bx: number, by: number): number {
  const t = shareOf(px, py, ax, ay, bx, by);
  const dx = ax + t * (bx - ax) - px;
  const dy = ay + t * (by - ay) - py;
  return dx * dx + dy * dy;
}

/** The nearest places of two legs: their crossing, else an end of one and its foot on the other. */
function placesOf(
  legs: Float64Array,
  own: number,
  outline: readonly Point[],
  other: number,
  found: NearestLegs,
): void {
  const ax = legs[4 * own] as number;
  const ay = legs[4 * own + 1] as number;
  const bx = legs[4 * own + 2] as number;
  const by = legs[4 * own + 3] as number;
  const { x: cx, y: cy } = outline[other] as Point;
  const { x: dx, y: dy } = outline[other + 1 < outline.length ? other + 1 : 0] as Point;
  if (legsCross(ax, ay, bx, by, cx, cy, dx, dy)) {
    const area = (bx - ax) * (dy - cy) - (by - ay) * (dx - cx);
    const t = ((cx - ax) * (dy - cy) - (cy - ay) * (dx - cx)) / area;
    found.fromX = ax + t * (bx - ax);
    found.fromY = ay + t * (by - ay);
    found.atX = found.fromX;
    found.atY = found.fromY;
    found.distance = 0;
    return;
  }
  const fromA = toLeg(ax, ay, cx, cy, dx, dy);
  const fromB = toLeg(bx, by, cx, cy, dx, dy);
  const toC = toLeg(cx, cy, ax, ay, bx, by);
  const toD = toLeg(dx, dy, ax, ay, bx, by);
  const least = Math.min(fromA, fromB, toC, toD);
  found.distance = Math.sqrt(least);
  if (least === fromA || least === fromB) {
    found.fromX = least === fromA ? ax : bx;
    found.fromY = least === fromA ? ay : by;
    const u = shareOf(found.fromX, found.fromY, cx, cy, dx, dy);
    found.atX = cx + u * (dx - cx);
    found.atY = cy + u * (dy - cy);
    return;
  }
  found.atX = least === toC ? cx : dx;
  found.atY = least === toC ? cy : dy;
  const t = shareOf(found.atX, found.atY, ax, ay, bx, by);
  found.fromX = ax + t * (bx - ax);
  found.fromY = ay + t * (by - ay);
}
