import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  pointToCircle,
  pointToPolyline,
  pointToRing,
  polylineToCircle,
  polylineToPolyline,
  polylineToRing,
} from './clearance';
import type { Clearance } from './clearanceType';
import { distance, interpolate, type Point } from './point';
import { segmentCrossesRing } from './ring';

/** Even over the range in steps of a millionth, unlike `fc.double`, whose values crowd round 0. */
const between = (min: number, max: number) =>
  fc.integer({ min: Math.round(min * 1e6), max: Math.round(max * 1e6) }).map((n) => n / 1e6);

const at = (x: number, y: number): Point => ({ x, y });
const square = [at(0, 0), at(10, 0), at(10, 10), at(0, 10)];
const coordinate = between(-20, 30);
const point = fc.record({ x: coordinate, y: coordinate });
const line = fc.array(point, { minLength: 1, maxLength: 5 });

function expectPlacesApart(found: Clearance) {
  expect(distance(found.from, found.at)).toBeCloseTo(Math.abs(found.distance), 8);
}

describe('from a point', () => {
  it('is negative inside a circle and a ring, with the place on the edge', () => {
    expect(pointToCircle(at(3, 0), at(0, 0), 5)).toEqual({ distance: -2, from: at(3, 0), at: at(5, 0) });
    expect(pointToCircle(at(0, 0), at(0, 0), 5)).toEqual({ distance: -5, from: at(0, 0), at: at(5, 0) });
    expect(pointToRing(at(4, 3), square)).toEqual({ distance: -3, from: at(4, 3), at: at(4, 0) });
    expect(pointToRing(at(13, 14), square)).toEqual({ distance: 5, from: at(13, 14), at: at(10, 10) });
    expect(pointToPolyline(at(-2, 5), square).distance).toBeCloseTo(Math.hypot(2, 5), 12);
  });
});

describe('from a polyline', () => {
  it('to a circle is the depth of its deepest point', () => {
    const found = polylineToCircle([at(-10, 2), at(10, 2)], at(0, 0), 5);
    expect(found).toEqual({ distance: -3, from: at(0, 2), at: at(0, 5) });
  });

  it('to a ring is negative by the deepest point, wherever along a leg it lies', () => {
    expect(polylineToRing([at(-5, 5), at(15, 5)], square).distance).toBeCloseTo(-5, 5);
    expect(polylineToRing([at(-5, 3), at(15, 3)], square).distance).toBeCloseTo(-3, 5);
    // Corner to corner of a square 10 wide, the middle is 5 deep.
    expect(polylineToRing([at(-1, -1), at(11, 11)], square).distance).toBeCloseTo(-5, 5);
    expect(polylineToRing([at(4, 2)], square).distance).toBe(-2);
  });

  it('to a ring is 0 when it slides along the edge and positive outside', () => {
    expect(polylineToRing([at(-5, 10), at(15, 10)], square).distance).toBe(0);
    expect(polylineToRing([at(13, 14), at(20, 14)], square)).toEqual({
      distance: 5,
      from: at(13, 14),
      at: at(10, 10),
    });
  });

  it('has its two places as far apart as it says', () => {
    fc.assert(
      fc.property(line, line, point, (first, second, centre) => {
        expectPlacesApart(polylineToPolyline(first, second));
        expectPlacesApart(polylineToRing(first, square));
        expectPlacesApart(polylineToCircle(first, centre, 3));
      }),
    );
  });

  it('to a polyline is the same both ways', () => {
    fc.assert(
      fc.property(line, line, (first, second) => {
        const there = polylineToPolyline(first, second).distance;
        expect(polylineToPolyline(second, first).distance).toBeCloseTo(there, 10);
      }),
    );
  });

  it('to a ring is never beaten by a sampled point', () => {
    fc.assert(
      fc.property(point, point, (a, b) => {
        const found = polylineToRing([a, b], square).distance;
        const samples = Array.from({ length: 101 }, (_, k) =>
          pointToRing(interpolate(a, b, k / 100), square),
        );
        const least = Math.min(...samples.map((s) => s.distance));
        expect(found).toBeLessThanOrEqual(least + 2e-4);
        expect(found).toBeGreaterThanOrEqual(least - distance(a, b) / 100 - 1e-4);
        expect(found < 0).toBe(segmentCrossesRing(a, b, square));
      }),
    );
  });
});
