import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pointAtAzimuth } from './angle';
import { dot, equalPoints, type Point, subtract } from './point';
import { ringCrossesItself } from './ringCrossesItself';
import { intersectSegments } from './segment';

const at = (x: number, y: number): Point => ({ x, y });
const square = [at(0, 0), at(10, 0), at(10, 10), at(0, 10)];
/** A U open to the top, its notch from x 3 to 7 down to y 4. */
const notched = [at(0, 0), at(10, 0), at(10, 10), at(7, 10), at(7, 4), at(3, 4), at(3, 10), at(0, 10)];

/** Star-shaped rings about the origin, so that their corners go round once. */
const starRing = fc
  .array(fc.integer({ min: 200, max: 2000 }), { minLength: 3, maxLength: 12 })
  .map((radii) => radii.map((r, i) => pointAtAzimuth(at(0, 0), (-2 * Math.PI * i) / radii.length, r / 100)));

/** Every two legs compared. */
function crossesByBruteForce(ring: readonly Point[]): boolean {
  const corners = ring.filter((p, i) => ring.length === 1 || !equalPoints(ring.at(i - 1) ?? p, p));
  const legs = corners.map((p, i) => [p, corners[(i + 1) % corners.length] ?? p] as const);
  return legs.some(([a, b], i) =>
    legs.some(([c, d], j) => {
      if (j <= i) return false;
      const { kind } = intersectSegments(a, b, c, d, 'included');
      const neighbours = j === i + 1 || (i === 0 && j === legs.length - 1);
      return neighbours ? kind === 'overlap' && dot(subtract(b, a), subtract(d, c)) < 0 : kind !== 'none';
    }),
  );
}

describe('ringCrossesItself', () => {
  it('says no of a simple ring, repeated corners or not', () => {
    expect(ringCrossesItself(notched)).toBe(false);
    expect(ringCrossesItself([...square, at(0, 0)])).toBe(false);
    expect(ringCrossesItself([])).toBe(false);
    fc.assert(fc.property(starRing, (ring) => !ringCrossesItself(ring)));
  });

  it('finds the crossing of a bow tie, a touching corner and the tip of a spike', () => {
    expect(ringCrossesItself([at(0, 0), at(4, 4), at(4, 0), at(0, 4)])).toBe(true);
    expect(ringCrossesItself([at(0, 0), at(10, 0), at(10, 5), at(5, 0), at(0, 5)])).toBe(true);
    expect(ringCrossesItself([at(0, 0), at(10, 0), at(10, 10), at(15, 10), at(10, 10), at(0, 10)])).toBe(
      true,
    );
  });

  it('agrees with every two legs compared, in rings on a coarse grid that often touch themselves', () => {
    const step = fc.integer({ min: 0, max: 6 });
    const corner = fc.tuple(step, step).map(([x, y]) => at(x, y));
    fc.assert(
      fc.property(fc.array(corner, { minLength: 3, maxLength: 7 }), (ring) => {
        expect(ringCrossesItself(ring)).toBe(crossesByBruteForce(ring));
      }),
      { numRuns: 2000, seed: 17 },
    );
  });

  it('is quick with thousands of corners, round ones and a comb that is all on one side of another', () => {
    const round = Array.from({ length: 5000 }, (_, i) =>
      pointAtAzimuth(at(0, 0), (-2 * Math.PI * i) / 5000, 100),
    );
    const comb = Array.from({ length: 4998 }, (_, i) => at(i / 100, i % 2 === 0 ? 0 : 60));
    const start = performance.now();
    expect(ringCrossesItself(round)).toBe(false);
    expect(ringCrossesItself([...comb, at(60, -1), at(-1, -1)])).toBe(false);
    // every two legs compared took seconds
    expect(performance.now() - start).toBeLessThan(500);
  });
});
