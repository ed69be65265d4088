import { visitLegs } from './legs';
import type { Region } from './region';
import { SLIVER_M } from './tolerances';

// The plane is cut into slabs at every corner and every crossing, so that within a slab no two legs cross and the region is a row of
// trapezoids from left to right:
//
//   high ──────/────────\───────/──/───
//             /  span    \     /  /         a span is told by the legs on its left and right
//   low  ────/────────────\───/──/─────
//
// Whatever rounding does to the order of legs that all but coincide, the trapezoids stay a consistent set: an answer always comes
// out, off by no more than the width of what was taken in the wrong order.

/** A leg that is not level, its lower end first. */
export type SlabSide = Readonly<{ x0: number; y0: number; x1: number; y1: number; operand: number }>;

export type SlabSpan = Readonly<{ left: SlabSide; right: SlabSide }>;

/** Between two levels (m) the spans of the region, from left to right. */
export type Slab = Readonly<{ low: number; high: number; spans: readonly SlabSpan[] }>;

/** Which places belong to a combination: told by how many operands they lie in, and whether in the first. */
export type Holds = (inside: number, inFirst: boolean) => boolean;

/** Where a side is at a level within its own, the very ends exact. */
export function sideAt(side: SlabSide, y: number): number {
  if (y === side.y0) return side.x0;
  if (y === side.y1) return side.x1;
  return side.x0 + ((y - side.y0) / (side.y1 - side.y0)) * (side.x1 - side.x0);
}

/** The slabs of a combination of regions, lowest first. */
export function slabsOf(operands: readonly Region[], holds: Holds): readonly Slab[] {
  const corners = merged(operands.flatMap((region) => region.flatMap((ring) => ring.map((p) => p.y))));
  const sides = sidesOf(operands, corners);
  const levels = allLevels(corners, sides);
  const slabs: Slab[] = [];
  let active: SlabSide[] = [];
  let next = 0;
  for (const [i, low] of levels.entries()) {
    const high = levels[i + 1];
    if (high === undefined) break;
    active = active.filter((side) => side.y1 > low);
    for (let side = sides[next]; side !== undefined && side.y0 <= low; side = sides[next]) {
      active.push(side);
      next += 1;
    }
    const spans = spansOf(active, low, high, holds, operands.length);
    if (spans.length > 0) slabs.push({ low, high, spans });
  }
  return slabs;
}

/** Levels in order; those within `SLIVER_M` of the one before are that one. */
function merged(values: readonly number[]): readonly number[] {
  const sorted = values.toSorted((a, b) => a - b);
  const kept: number[] = [];
  for (const y of sorted) if (y - (kept.at(-1) ?? -Infinity) > SLIVER_M) kept.push(y);
  return kept;
}

/** Index of the last level that is not above `y`; of the first when all are. */
function levelBelow(levels: readonly number[], y: number): number {
  let [low, high] = [0, levels.length];
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if ((levels[middle] ?? Infinity) <= y) low = middle;
    else high = middle;
  }
  return low;
}

/** All sides by their lower level. */
function sidesOf(operands: readonly Region[], levels: readonly number[]): readonly SlabSide[] {
  const sides: SlabSide[] = [];
  const levelOf = (y: number) => levels[levelBelow(levels, y)] ?? y;
  for (const [operand, region] of operands.entries()) {
    for (const ring of region) {
      visitLegs(ring, true, (a, b) => {
        const [ya, yb] = [levelOf(a.y), levelOf(b.y)];
        if (ya < yb) sides.push({ x0: a.x, y0: ya, x1: b.x, y1: yb, operand });
        if (yb < ya) sides.push({ x0: b.x, y0: yb, x1: a.x, y1: ya, operand });
      });
    }
  }
  return sides.sort((s, t) => s.y0 - t.y0);
}

/** The corners' levels and those of all crossings, in order; a crossing within `SLIVER_M` of another level adds none. */
function allLevels(corners: readonly number[], sides: readonly SlabSide[]): readonly number[] {
  const crossings: number[] = [];
  for (const [i, s] of sides.entries()) {
    const [sMin, sMax] = [Math.min(s.x0, s.x1), Math.max(s.x0, s.x1)];
    for (let k = i + 1; k < sides.length; k += 1) {
      const t = sides[k];
      if (t === undefined || t.y0 >= s.y1) break;
      if (Math.min(t.x0, t.x1) > sMax || Math.max(t.x0, t.x1) < sMin) continue;
      const [low, high] = [t.y0, Math.min(s.y1, t.y1)];
      const before = sideAt(s, low) - sideAt(t, low);
      const after = sideAt(s, high) - sideAt(t, high);
      if (before * after < 0) crossings.push(low + ((high - low) * before) / (before - after));
    }
  }
  if (crossings.length === 0) return corners;
  const between = merged(crossings).filter((y) => {
    const below = levelBelow(corners, y);
    return y - (corners[below] ?? -Infinity) > SLIVER_M && (corners[below + 1] ?? Infinity) - y > SLIVER_M;
  });
  return [...corners, ...between].sort((a, b) => a - b);
}

function spansOf(
  active: readonly SlabSide[],
  low: number,
  high: number,
  holds: Holds,
  operands: number,
): readonly SlabSpan[] {
  const middle = (low + high) / 2;
  const row = active.map((side) => ({ side, x: sideAt(side, middle) })).sort((s, t) => s.x - t.x);
  const within = new Array<boolean>(operands).fill(false);
  const spans: SlabSpan[] = [];
  let inside = 0;
  let left: SlabSide | null = null;
  for (const { side } of row) {
    const entered = within[side.operand] !== true;
    within[side.operand] = entered;
    inside += entered ? 1 : -1;
    const held = holds(inside, within[0] === true);
    if (held && left === null) left = side;
    if (held || left === null) continue;
    addSpan(spans, { left, right: side }, low, high);
    left = null;
  }
  return spans;
}

/** Closes a gap to the span before that is no gap, and leaves out a span that is none. */
function addSpan(spans: SlabSpan[], span: SlabSpan, low: number, high: number): void {
  const before = spans.at(-1);
  if (before !== undefined && isSliver(before.right, span.left, low, high))
    spans[spans.length - 1] = { left: before.left, right: span.right };
  else if (!isSliver(span.left, span.right, low, high)) spans.push(span);
}

/** Whether two sides run along each other within `SLIVER_M`, square to them, all the way from level to level. */
function isSliver(a: SlabSide, b: SlabSide, low: number, high: number): boolean {
  const width = Math.max(
    Math.abs(sideAt(a, low) - sideAt(b, low)),
    Math.abs(sideAt(a, high) - sideAt(b, high)),
  );
  return width <= SLIVER_M || Math.min(width * steepness(a), width * steepness(b)) <= SLIVER_M;
}

/** Sine of a side's angle with the level. */
function steepness({ x0, y0, x1, y1 }: SlabSide): number {
  return (y1 - y0) / Math.sqrt((x1 - x0) ** 2 + (y1 - y0) ** 2);
}
