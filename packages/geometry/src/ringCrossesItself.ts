import { visitLegs } from './legs';
import { dot, equalPoints, type Point, subtract } from './point';
import { intersectSegments } from './segment';
import { COINCIDENT_M } from './tolerances';

/**
 * Whether the ring crosses or touches itself (within `COINCIDENT_M`): a crossing, a corner on another leg, legs that run along each
 * other, a leg that doubles back. Coincident neighbouring corners are taken as one. The legs are swept in x, or in y for a ring that
 * is higher than wide, so that only those beside each other are compared.
 */
export function ringCrossesItself(points: readonly Point[]): boolean {
  const ring = withoutRepeats(points);
  const legs = legsOf(ring);
  const wide = span(ring.map((p) => p.x)) >= span(ring.map((p) => p.y));
  const start = (leg: Leg) => (wide ? leg.minX : leg.minY);
  legs.sort((s, t) => start(s) - start(t));
  for (const [k, one] of legs.entries()) {
    const end = (wide ? one.maxX : one.maxY) + COINCIDENT_M;
    for (let m = k + 1; m < legs.length; m += 1) {
      const other = legs[m];
      if (other === undefined || start(other) > end) break;
      const apart = wide
        ? other.minY > one.maxY + COINCIDENT_M || one.minY > other.maxY + COINCIDENT_M
        : other.minX > one.maxX + COINCIDENT_M || one.minX > other.maxX + COINCIDENT_M;
      if (apart) continue;
      const [first, second] = one.index < other.index ? [one, other] : [other, one];
      if (meetWrongly(first, second, legs.length)) return true;
    }
  }
  return false;
}

type Leg = {
  readonly a: Point;
  readonly b: Point;
  readonly index: number;
  readonly minX: number;
  readonly maxX: number;
  readonly minY: number;
  readonly maxY: number;
};

/** Whether two legs of a ring of `count` meet, other than at the corner that neighbours share; `first` comes before `second`. */
function meetWrongly(first: Leg, second: Leg, count: number): boolean {
  const { a, b } = first;
  const { a: c, b: d } = second;
  const meet = intersectSegments(a, b, c, d, 'included');
  const neighbours = second.index === first.index + 1 || (first.index === 0 && second.index === count - 1);
  if (!neighbours) return meet.kind !== 'none';
  // neighbours always share a corner; only a leg that doubles back is a fault
  return meet.kind === 'overlap' && dot(subtract(b, a), subtract(d, c)) < 0;
}

function legsOf(ring: readonly Point[]): Leg[] {
  const legs: Leg[] = [];
  visitLegs(ring, true, (a, b, index) => {
    legs.push({
      a,
      b,
      index,
      minX: Math.min(a.x, b.x),
      maxX: Math.max(a.x, b.x),
      minY: Math.min(a.y, b.y),
      maxY: Math.max(a.y, b.y),
    });
  });
  return legs;
}

function span(values: readonly number[]): number {
  let [least, most] = [Infinity, -Infinity];
  for (const v of values) [least, most] = [Math.min(least, v), Math.max(most, v)];
  return most - least;
}

function withoutRepeats(ring: readonly Point[]): readonly Point[] {
  return ring.filter((p, i) => {
    const before = ring.at(i - 1);
    return ring.length === 1 || before === undefined || !equalPoints(before, p);
  });
}
