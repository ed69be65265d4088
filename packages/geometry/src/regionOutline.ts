import { cross, distance, type Point, subtract } from './point';
import type { Region } from './region';
import { type Slab, sideAt } from './regionSlabs';
import { ringArea } from './ring';
import { NEGLIGIBLE_LENGTH_M, SLIVER_M } from './tolerances';

/** One leg of the outline; the region lies on its left. */
type Leg = { readonly from: Point; readonly to: Point; used: boolean };

/** The rings round the trapezoids of slabs. */
export function outlineOfSlabs(slabs: readonly Slab[]): Region {
  const legs = legsOf(slabs);
  const leaving = new Map<string, Leg[]>();
  for (const leg of legs) {
    const key = keyOf(leg.from);
    const others = leaving.get(key);
    if (others === undefined) leaving.set(key, [leg]);
    else others.push(leg);
  }
  const rings: (readonly Point[])[] = [];
  for (const leg of legs) {
    if (leg.used) continue;
    const ring = tidied(ringFrom(leg, leaving));
    if (ring.length > 2 && Math.abs(ringArea(ring)) > SLIVER_M * SLIVER_M) rings.push(ring);
  }
  return rings;
}

function keyOf({ x, y }: Point): string {
  return `${x} ${y}`;
}

/** Down the left sides, up the right ones, and along a level wherever the region lies on one side of it only. */
function legsOf(slabs: readonly Slab[]): readonly Leg[] {
  const legs: Leg[] = [];
  const add = (from: Point, to: Point) => legs.push({ from, to, used: false });
  /** By level: where the region above begins (+1) and ends, less where the region below does. */
  const turns = new Map<number, { x: number; by: number }[]>();
  const turnAt = (y: number, x: number, by: number) => {
    const found = turns.get(y);
    if (found === undefined) turns.set(y, [{ x, by }]);
    else found.push({ x, by });
  };
  for (const { low, high, spans } of slabs) {
    for (const { left, right } of spans) {
      const [leftLow, leftHigh] = [sideAt(left, low), sideAt(left, high)];
      const [rightLow, rightHigh] = [sideAt(right, low), sideAt(right, high)];
      add({ x: leftHigh, y: high }, { x: leftLow, y: low });
      add({ x: rightLow, y: low }, { x: rightHigh, y: high });
      turnAt(low, leftLow, 1);
      turnAt(low, rightLow, -1);
      turnAt(high, leftHigh, -1);
      turnAt(high, rightHigh, 1);
    }
  }
  for (const [y, found] of turns) {
    found.sort((s, t) => s.x - t.x);
    let above = 0;
    for (const [i, { x, by }] of found.entries()) {
      above += by;
      const end = found[i + 1]?.x;
      if (end === undefined || end === x) continue;
      for (let n = above; n > 0; n -= 1) add({ x, y }, { x: end, y });
      for (let n = above; n < 0; n += 1) add({ x: end, y }, { x, y });
    }
  }
  return legs;
}

/** Where rings touch at a corner, the leg furthest to the left is taken: it goes on round the same piece. */
function ringFrom(first: Leg, leaving: ReadonlyMap<string, readonly Leg[]>): readonly Point[] {
  const ring: Point[] = [];
  const start = keyOf(first.from);
  for (let leg: Leg | undefined = first; leg !== undefined; ) {
    leg.used = true;
    ring.push(leg.from);
    const end = keyOf(leg.to);
    if (end === start) break;
    const open: readonly Leg[] = (leaving.get(end) ?? []).filter((next) => !next.used);
    const heading = subtract(leg.to, leg.from);
    leg = open.reduce<Leg | undefined>(
      (best, next) => (best === undefined || turn(heading, next) > turn(heading, best) ? next : best),
      undefined,
    );
  }
  return ring;
}

/** Radians to the left. */
function turn(heading: Point, { from, to }: Leg): number {
  const next = subtract(to, from);
  return Math.atan2(cross(heading, next), heading.x * next.x + heading.y * next.y);
}

/** Without corners on a straight line, repeated corners and spikes. */
function tidied(ring: readonly Point[]): readonly Point[] {
  let kept = ring;
  for (;;) {
    const fewer = onceTidied(kept);
    if (fewer.length === kept.length || fewer.length < 3) return fewer;
    kept = fewer;
  }
}

function onceTidied(ring: readonly Point[]): readonly Point[] {
  const kept: Point[] = [];
  for (const [i, p] of ring.entries()) {
    const before = kept.at(-1) ?? ring.at(-1) ?? p;
    const after = ring[i + 1] ?? kept[0] ?? p;
    if (!isIdle(before, p, after)) kept.push(p);
  }
  return kept;
}

function isIdle(before: Point, p: Point, after: Point): boolean {
  const base = distance(before, after);
  if (base <= NEGLIGIBLE_LENGTH_M || distance(before, p) <= NEGLIGIBLE_LENGTH_M) return true;
  return Math.abs(cross(subtract(after, before), subtract(p, before))) / base <= NEGLIGIBLE_LENGTH_M;
}
