import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pointAtAzimuth } from './angle';
import { distance, type Point, rotate } from './point';
import { nearestOnPolyline, polylineLength } from './polyline';
import { pointInRing, ringArea, ringPerimeter, segmentCrossesRing } from './ring';

/** Even over the range in steps of a millionth, unlike `fc.double`, whose values crowd round 0. */
const between = (min: number, max: number) =>
  fc.integer({ min: Math.round(min * 1e6), max: Math.round(max * 1e6) }).map((n) => n / 1e6);

const at = (x: number, y: number): Point => ({ x, y });
const square = [at(0, 0), at(10, 0), at(10, 10), at(0, 10)];
/** A U open to the top, its notch from x 3 to 7 down to y 4. */
const notched = [at(0, 0), at(10, 0), at(10, 10), at(7, 10), at(7, 4), at(3, 4), at(3, 10), at(0, 10)];

/** Star-shaped rings about the origin, so that their corners go round once. */
const starRing = fc
  .array(between(2, 20), { minLength: 3, maxLength: 12 })
  .map((radii) => radii.map((r, i) => pointAtAzimuth(at(0, 0), (-2 * Math.PI * i) / radii.length, r)));

describe('polylines', () => {
  it('measure along, and closed to the last leg', () => {
    expect(polylineLength(square)).toBe(30);
    expect(polylineLength([at(1, 1)])).toBe(0);
    expect(nearestOnPolyline(at(-1, 4), square, false)).toMatchObject({ leg: 0, along: 0 });
    const closing = { point: at(0, 4), distance: 1, leg: 3, t: 0.6, along: 36 };
    expect(nearestOnPolyline(at(-1, 4), square, true)).toEqual(closing);
    expect(nearestOnPolyline(at(4, 5), [at(1, 1)], true)).toMatchObject({ distance: 5, leg: 0, t: 0 });
    expect(() => nearestOnPolyline(at(0, 0), [], false)).toThrow(RangeError);
  });
});

describe('area and perimeter', () => {
  it('are signed counter-clockwise, and 0 without three corners', () => {
    expect([ringArea(square), ringArea(square.toReversed()), ringPerimeter(square)]).toEqual([100, -100, 40]);
    expect([ringArea([]), ringArea([at(1, 1)]), ringArea(square.slice(0, 2))]).toEqual([0, 0, 0]);
    expect(ringArea([...square, at(0, 0)])).toBe(100);
  });

  it('keep under turning and shifting and flip under mirroring', () => {
    const angle = between(0, 6.28);
    fc.assert(
      fc.property(starRing, angle, (ring, turn) => {
        const moved = ring.map((p) => rotate(at(p.x + 1e6, p.y - 1e6), turn));
        expect(ringArea(moved)).toBeCloseTo(ringArea(ring), 4);
        expect(ringArea(ring.map((p) => at(-p.x, p.y)))).toBeCloseTo(-ringArea(ring), 9);
        expect(ringArea(ring)).toBeGreaterThan(0);
      }),
    );
  });

  it('scale', () => {
    for (const k of [1e-3, 1e3, 1e6]) {
      const scaled = notched.map((p) => at(p.x * k, p.y * k));
      expect(ringArea(scaled) / k / k).toBeCloseTo(76, 9);
    }
  });
});

describe('pointInRing', () => {
  it('tells the edge within a tenth of a millimetre', () => {
    const where = (x: number, y: number) => pointInRing(at(x, y), square);
    expect([where(5, 5), where(15, 5), where(5, 10), where(0, 0)]).toEqual([
      'inside',
      'outside',
      'edge',
      'edge',
    ]);
    expect([where(5, 5e-5), where(5, 2e-4), where(5, -2e-4)]).toEqual(['edge', 'inside', 'outside']);
  });

  it('is not fooled by a corner at the height of the point', () => {
    const diamond = [at(0, -5), at(5, 0), at(0, 5), at(-5, 0)];
    const row = [-6, -1, 1, 6].map((x) => pointInRing(at(x, 0), diamond));
    expect(row).toEqual(['outside', 'inside', 'inside', 'outside']);
    expect(pointInRing(at(5, 7), notched)).toBe('outside');
  });

  it('gives fewer than three corners no inside', () => {
    expect(pointInRing(at(0, 0), [])).toBe('outside');
    expect(pointInRing(at(0, 0), [at(0, 0)])).toBe('edge');
    expect(pointInRing(at(5, 0), [at(0, 0), at(10, 0)])).toBe('edge');
    expect(pointInRing(at(5, 1), [at(0, 0), at(10, 0)])).toBe('outside');
  });

  it('does not depend on the sense of the ring or its first corner', () => {
    const coordinate = between(-20, 20);
    fc.assert(
      fc.property(starRing, coordinate, coordinate, fc.nat(11), (ring, x, y, first) => {
        const where = pointInRing(at(x, y), ring);
        const cut = first % ring.length;
        expect(pointInRing(at(x, y), ring.toReversed())).toBe(where);
        expect(pointInRing(at(x, y), [...ring.slice(cut), ...ring.slice(0, cut)])).toBe(where);
        expect(
          pointInRing(
            at(-x, y),
            ring.map((p) => at(-p.x, p.y)),
          ),
        ).toBe(where);
      }),
    );
  });
});

describe('segmentCrossesRing', () => {
  it('counts passing through, starting and lying inside', () => {
    expect(segmentCrossesRing(at(-5, 5), at(15, 5), square)).toBe(true);
    expect(segmentCrossesRing(at(5, 5), at(15, 5), square)).toBe(true);
    expect(segmentCrossesRing(at(4, 5), at(6, 5), square)).toBe(true);
    expect(segmentCrossesRing(at(0, 0), at(10, 10), square)).toBe(true);
    expect(segmentCrossesRing(at(0, 5), at(10, 5), square)).toBe(true);
  });

  it('does not count sliding along an edge, touching a corner or crossing a notch', () => {
    expect(segmentCrossesRing(at(-5, 0), at(15, 0), square)).toBe(false);
    expect(segmentCrossesRing(at(2, 0), at(8, 0), square)).toBe(false);
    expect(segmentCrossesRing(at(-5, 5), at(5, -5), square)).toBe(false);
    expect(segmentCrossesRing(at(3, 8), at(7, 8), notched)).toBe(false);
    expect(segmentCrossesRing(at(5, 5), at(5, 5), square)).toBe(false);
  });

  it('counts a short cut through a corner that starts and ends on edges', () => {
    expect(segmentCrossesRing(at(9.99, 0), at(10, 0.01), square)).toBe(true);
  });

  it('is the same both ways, and true whenever a sample well along it lies inside', () => {
    const coordinate = between(-25, 25);
    fc.assert(
      fc.property(starRing, coordinate, coordinate, coordinate, coordinate, (ring, x, y, u, v) => {
        const [a, b] = [at(x, y), at(u, v)];
        const crosses = segmentCrossesRing(a, b, ring);
        expect(segmentCrossesRing(b, a, ring)).toBe(crosses);
        const deep = Array.from({ length: 19 }, (_, k) => {
          const t = (k + 1) / 20;
          return at(x + (u - x) * t, y + (v - y) * t);
        }).some((p) => pointInRing(p, ring) === 'inside' && nearestOnPolyline(p, ring, true).distance > 0.01);
        if (deep && distance(a, b) > 0.01) expect(crosses).toBe(true);
      }),
    );
  });
});
