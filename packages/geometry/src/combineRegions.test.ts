import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { differenceOf, intersectionArea, intersectionOf, regionArea, unionOf } from './combineRegions';
import { type Point, rotate } from './point';
import type { Region } from './region';
import { pointInRing, ringArea } from './ring';
import { ringCrossesItself } from './ringCrossesItself';

const at = (x: number, y: number): Point => ({ x, y });
const box = (x: number, y: number, width: number, height: number): Region => [
  [at(x, y), at(x + width, y), at(x + width, y + height), at(x, y + height)],
];
const between = (min: number, max: number) =>
  fc.integer({ min: Math.round(min * 1e6), max: Math.round(max * 1e6) }).map((n) => n / 1e6);
const point = fc.record({ x: between(-10, 10), y: between(-10, 10) });
const ring = fc.array(point, { minLength: 3, maxLength: 8 });
/** Corners on whole metres, so that edges and corners often coincide. */
const coarse = fc.array(fc.record({ x: fc.integer({ min: 0, max: 5 }), y: fc.integer({ min: 0, max: 5 }) }), {
  minLength: 3,
  maxLength: 7,
});
const SEED = { seed: 1926 };

const signedArea = (region: Region) => region.reduce((sum, one) => sum + ringArea(one), 0);
const holds = (region: Region, p: Point) =>
  region.filter((one) => pointInRing(p, one) === 'inside').length % 2 === 1;
const onEdge = (region: Region, p: Point) => region.some((one) => pointInRing(p, one) === 'edge');

describe('unionOf', () => {
  it('makes one piece of two that overlap', () => {
    const both = unionOf([box(0, 0, 4, 2), box(3, 1, 4, 2)]);
    expect(both).toHaveLength(1);
    expect(both[0]).toHaveLength(8);
    expect(signedArea(both)).toBeCloseTo(15, 12);
  });

  it('makes one piece, without a corner at the seam, of two that share an edge, however they lie', () => {
    for (let degrees = 0; degrees < 360; degrees += 7) {
      const angle = (degrees * Math.PI) / 180;
      const turn = (region: Region) => region.map((one) => one.map((p) => rotate(p, angle, at(1000.3, -7))));
      const both = unionOf([turn(box(0, 0, 4, 2)), turn(box(4, 0, 3, 2))]);
      expect(both).toHaveLength(1);
      expect(both[0]).toHaveLength(4);
      expect(signedArea(both)).toBeCloseTo(14, 9);
    }
  });

  it('keeps a yard that is walled all round as a hole', () => {
    const walls = unionOf([box(0, 0, 10, 1), box(0, 9, 10, 1), box(0, 0, 1, 10), box(9, 0, 1, 10)]);
    expect(walls.map(ringArea).sort((a, b) => a - b)).toEqual([-64, 100]);
  });

  it('takes a ring that crosses itself by the even-odd rule', () => {
    const bow = unionOf([[[at(0, 0), at(2, 2), at(2, 0), at(0, 2)]]]);
    expect(bow.map(ringArea)).toEqual([1, 1]);
  });

  it('is nothing of nothing, of a ring without area and of no region at all', () => {
    expect(unionOf([])).toEqual([]);
    expect(unionOf([[]])).toEqual([]);
    expect(unionOf([[[at(0, 0), at(5, 0), at(2, 0)]], [[at(1, 1), at(1, 1)]]])).toEqual([]);
  });
});

describe('intersectionOf and differenceOf', () => {
  it('are the shared and the remaining piece', () => {
    expect(intersectionOf(box(0, 0, 4, 2), box(3, 1, 4, 2)).map(ringArea)).toEqual([1]);
    expect(intersectionOf(box(0, 0, 1, 1), box(5, 5, 1, 1))).toEqual([]);
    const frame = differenceOf(box(0, 0, 10, 10), [box(2, 2, 3, 3), box(4, 4, 3, 3)]);
    expect(frame).toHaveLength(2);
    expect(signedArea(frame)).toBeCloseTo(100 - 17, 12);
  });

  it('leave nothing over where only edges touch', () => {
    expect(intersectionOf(box(0, 0, 4, 2), box(4, 0, 3, 2))).toEqual([]);
    expect(differenceOf(box(0, 0, 4, 2), [box(0, 0, 2, 2), box(2, -1, 4, 5)])).toEqual([]);
  });
});

describe.each([
  ['anywhere', ring],
  ['on whole metres', coarse],
])('of random rings %s', (_, rings) => {
  it('the areas add up', () => {
    fc.assert(
      fc.property(rings, rings, (a, b) => {
        const shared = intersectionArea([a], [b]);
        expect(shared).toBeCloseTo(intersectionArea([b], [a]), 9);
        expect(signedArea(intersectionOf([a], [b]))).toBeCloseTo(shared, 5);
        expect(signedArea(unionOf([[a], [b]]))).toBeCloseTo(regionArea([a]) + regionArea([b]) - shared, 5);
        expect(signedArea(differenceOf([a], [[b]]))).toBeCloseTo(regionArea([a]) - shared, 5);
      }),
      { ...SEED, numRuns: 120 },
    );
  });

  it('a place is in a result exactly when it should be', () => {
    fc.assert(
      fc.property(rings, rings, fc.array(point, { minLength: 20, maxLength: 20 }), (a, b, places) => {
        const [any, both, only] = [unionOf([[a], [b]]), intersectionOf([a], [b]), differenceOf([a], [[b]])];
        for (const p of places) {
          if ([[a], [b], any, both, only].some((region) => onEdge(region, p))) continue;
          const [inA, inB] = [holds([a], p), holds([b], p)];
          expect([holds(any, p), holds(both, p), holds(only, p)]).toEqual([
            inA || inB,
            inA && inB,
            inA && !inB,
          ]);
        }
      }),
      { ...SEED, numRuns: 120 },
    );
  });
});

describe('of random rings', () => {
  it('the result is the same turned, mirrored, moved far away and scaled', () => {
    fc.assert(
      fc.property(ring, ring, between(0, 6), between(0.01, 1000), (a, b, angle, k) => {
        const area = intersectionArea([a], [b]);
        const alike = (change: (p: Point) => Point) => intersectionArea([a.map(change)], [b.map(change)]);
        expect(alike((p) => rotate(p, angle))).toBeCloseTo(area, 6);
        expect(alike((p) => at(-p.x, p.y))).toBeCloseTo(area, 6);
        expect(alike((p) => at(p.y, p.x))).toBeCloseTo(area, 6);
        expect(alike((p) => at(p.x + 1e6, p.y - 1e6))).toBeCloseTo(area, 5);
        expect(alike((p) => at(p.x * k, p.y * k)) / k / k).toBeCloseTo(area, 3);
      }),
      SEED,
    );
  });

  it('rings of a union neither cross themselves nor have a corner too many', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(point, between(0.5, 6), between(0.5, 6), between(0, 3)), { maxLength: 8 }),
        (boxes) => {
          const region = unionOf(
            boxes.map(([p, width, height, angle]) =>
              box(p.x, p.y, width, height).map((one) => one.map((corner) => rotate(corner, angle, p))),
            ),
          );
          for (const one of region)
            expect(ringCrossesItself(one) && Math.abs(ringArea(one)) > 0.01).toBe(false);
        },
      ),
      SEED,
    );
  });
});
