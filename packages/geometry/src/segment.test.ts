import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { distance, interpolate, type Point } from './point';
import { intersectSegments, nearestOnSegment, segmentDistance } from './segment';

/** Even over the range in steps of a millionth, unlike `fc.double`, whose values crowd round 0. */
const between = (min: number, max: number) =>
  fc.integer({ min: Math.round(min * 1e6), max: Math.round(max * 1e6) }).map((n) => n / 1e6);

const coordinate = between(-50, 50);
const point: fc.Arbitrary<Point> = fc.record({ x: coordinate, y: coordinate });
const at = (x: number, y: number): Point => ({ x, y });

describe('nearestOnSegment', () => {
  it('keeps to the ends and takes a segment without length as its point', () => {
    expect(nearestOnSegment(at(-3, 4), at(0, 0), at(10, 0))).toEqual({ point: at(0, 0), t: 0, distance: 5 });
    expect(nearestOnSegment(at(4, 2), at(0, 0), at(10, 0))).toEqual({ point: at(4, 0), t: 0.4, distance: 2 });
    expect(nearestOnSegment(at(3, 4), at(0, 0), at(0, 0))).toEqual({ point: at(0, 0), t: 0, distance: 5 });
  });

  it('is never beaten by a sampled point', () => {
    fc.assert(
      fc.property(point, point, point, (p, a, b) => {
        const nearest = nearestOnSegment(p, a, b);
        for (let k = 0; k <= 20; k += 1) {
          const sample = at(a.x + ((b.x - a.x) * k) / 20, a.y + ((b.y - a.y) * k) / 20);
          expect(nearest.distance).toBeLessThanOrEqual(distance(p, sample) + 1e-12);
        }
      }),
    );
  });
});

describe('segmentDistance', () => {
  it('is the same both ways and equals the length between its two places', () => {
    fc.assert(
      fc.property(point, point, point, point, (a, b, c, d) => {
        const there = segmentDistance(a, b, c, d);
        const back = segmentDistance(d, c, b, a);
        expect(there.distance).toBeCloseTo(back.distance, 10);
        expect(distance(there.from, there.to)).toBeCloseTo(there.distance, 10);
      }),
    );
  });

  it('scales and does not care how far away the origin is', () => {
    for (const k of [1e-3, 1, 1e3, 1e6]) {
      const found = segmentDistance(at(0, 0), at(0, 4 * k), at(3 * k, k), at(9 * k, k));
      expect(found.distance / k).toBeCloseTo(3, 12);
    }
    const far = 1e6;
    const found = segmentDistance(at(far, far), at(far, far + 4), at(far + 3, far + 1), at(far + 9, far + 1));
    expect(found.distance).toBeCloseTo(3, 9);
  });
});

describe('intersectSegments', () => {
  const kind = (...s: [Point, Point, Point, Point]) => [
    intersectSegments(...s, 'included').kind,
    intersectSegments(...s, 'excluded').kind,
  ];

  it('has one policy for ends: included, excluded', () => {
    const [a, b] = [at(0, 0), at(10, 0)];
    expect(kind(a, b, at(5, -5), at(5, 5))).toEqual(['point', 'point']);
    expect(kind(a, b, at(5, 0), at(5, 5))).toEqual(['point', 'none']);
    expect(kind(a, b, at(10, 0), at(15, 5))).toEqual(['point', 'none']);
    expect(kind(a, b, at(10, 0), at(15, 0))).toEqual(['point', 'none']);
    expect(kind(a, b, at(5, 5e-5), at(5, 5))).toEqual(['point', 'none']);
    expect(kind(a, b, at(5, 5e-4), at(5, 5))).toEqual(['none', 'none']);
    expect(kind(a, b, at(0, 1), at(10, 1))).toEqual(['none', 'none']);
    expect(kind(a, b, at(4, 0), at(4, 0))).toEqual(['point', 'none']);
  });

  it('gives the shared stretch of segments on one line', () => {
    const found = intersectSegments(at(0, 0), at(10, 0), at(14, 0), at(6, 0), 'excluded');
    expect(found).toEqual({ kind: 'overlap', from: at(6, 0), to: at(10, 0) });
    expect(kind(at(0, 0), at(10, 0), at(-5, 5e-5), at(15, -5e-5))).toEqual(['overlap', 'overlap']);
  });

  it('agrees with itself when the segments or their ends are swapped', () => {
    fc.assert(
      fc.property(point, point, point, point, (a, b, c, d) => {
        const there = intersectSegments(a, b, c, d, 'included');
        const back = intersectSegments(d, c, b, a, 'included');
        expect(back.kind).toBe(there.kind);
        if (there.kind === 'point' && back.kind === 'point') {
          expect(distance(there.point, back.point)).toBeLessThan(1e-4);
          expect(distance(interpolate(a, b, there.t), there.point)).toBeLessThan(1e-4);
          expect(distance(interpolate(c, d, there.u), there.point)).toBeLessThan(1e-4);
        }
      }),
    );
  });
});
