import { describe, expect, it } from 'vitest';
import { radians } from './angle';
import { lengthAlongArc, pointsOnArc, radiusOfArc, segmentArea } from './arc';
import { arcRingArea, arcRingPerimeter, flattenArcs } from './arcLine';
import { distance, type Point, rotate } from './point';
import { ringArea, ringPerimeter } from './ring';
import { nearestOnSegment } from './segment';

const HALF = Math.PI;
const at = (x: number, y: number): Point => ({ x, y });

describe('an arc by its ends and sweep', () => {
  it('has radius, length and segment by hand', () => {
    // a quarter of radius 10: chord 10√2, length 5π, segment 100·(π/2 − 1)/2
    const chord = 10 * Math.SQRT2;
    expect(radiusOfArc(chord, radians(90))).toBeCloseTo(10, 12);
    expect(lengthAlongArc(chord, radians(-90))).toBeCloseTo(5 * Math.PI, 12);
    expect(segmentArea(chord, radians(90))).toBeCloseTo(50 * (Math.PI / 2 - 1), 12);
    // three quarters of the same circle: the same chord, the greater segment
    expect(radiusOfArc(chord, radians(270))).toBeCloseTo(10, 12);
    expect(segmentArea(chord, radians(270))).toBeCloseTo(50 * (1.5 * Math.PI + 1), 12);
    expect(radiusOfArc(7, 0)).toBe(Infinity);
    expect(segmentArea(7, 0)).toBe(0);
  });

  it('keeps its digits when it is nearly straight', () => {
    // s·c/… for a flat arc: area = ⅔·chord·sagitta, sagitta = chord·Δ/8
    expect(segmentArea(100, 1e-5) / ((2 / 3) * 100 * ((100 * 1e-5) / 8))).toBeCloseTo(1, 9);
    expect(segmentArea(100, 0.00099999) / segmentArea(100, 0.00100001)).toBeCloseTo(0.99998, 6);
  });

  it('bulges to the left when it turns right', () => {
    const [middle, ...more] = pointsOnArc(at(0, 0), at(0, 2), HALF, 0.5);
    expect(more).toEqual([]);
    expect(middle?.x).toBeCloseTo(-1, 12); // from south to north by the west
    expect(middle?.y).toBeCloseTo(1, 12);
    expect(pointsOnArc(at(0, 0), at(0, 2), -HALF, 0.5)[0]?.x).toBeCloseTo(1, 12);
  });

  it.each([0.3, -1.2, 3.5, -5.8])('lies on its circle within the sagitta, sweep %d', (sweep) => {
    const [a, b] = [at(3, -2), at(12, 5)];
    const points = [a, ...pointsOnArc(a, b, sweep, 0.01), b];
    const radius = radiusOfArc(distance(a, b), sweep);
    for (let i = 0; i + 2 < points.length; i++) {
      const [p, q, r] = [points[i], points[i + 1], points[i + 2]] as [Point, Point, Point];
      const [c, d, e] = [distance(p, q), distance(q, r), distance(p, r)];
      const twice = Math.abs((q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x));
      expect((c * d * e) / (2 * twice)).toBeCloseTo(radius, 6); // circumscribed circle
      expect(radius - Math.sqrt(radius ** 2 - (c / 2) ** 2)).toBeLessThanOrEqual(0.01 + 1e-12);
    }
    const length = points.slice(1).reduce((sum, p, i) => sum + distance(p, points[i] ?? p), 0);
    expect(length / lengthAlongArc(distance(a, b), sweep)).toBeGreaterThan(0.99);
  });

  it('is nothing between ends that are one', () => {
    expect(pointsOnArc(at(1, 1), at(1, 1), 1, 0.01)).toEqual([]);
    // a radius of 10 km would ask for thousands of chords
    expect(pointsOnArc(at(0, 0), at(0, 19_950), 3, 0.002)).toHaveLength(719);
    expect(() => pointsOnArc(at(0, 0), at(1, 1), 1, 0)).toThrow(RangeError);
  });
});

describe('a ring of legs and arcs', () => {
  const square = [at(0, 0), at(10, 0), at(10, 10), at(0, 10)];

  it('is a full circle of two halves, either way round', () => {
    const ends = [at(-4, 0), at(4, 0)];
    expect(arcRingArea(ends, [-HALF, -HALF])).toBeCloseTo(16 * Math.PI, 10);
    expect(arcRingArea(ends, [HALF, HALF])).toBeCloseTo(-16 * Math.PI, 10);
    expect(arcRingPerimeter(ends, [HALF, HALF])).toBeCloseTo(8 * Math.PI, 10);
  });

  it('agrees with a fine polygon in area and length, turned and far away too', () => {
    const sweeps = [-0.8, 1.9, 0, -3.6];
    for (const move of [
      (p: Point) => p,
      (p: Point) => rotate({ x: p.x + 3e5, y: p.y - 2e5 }, 1.1, { x: 3e5, y: -2e5 }),
    ]) {
      const corners = square.map(move);
      const fine = flattenArcs(corners, sweeps, true, 1e-6);
      expect(arcRingArea(corners, sweeps)).toBeCloseTo(ringArea(fine), 3);
      expect(arcRingPerimeter(corners, sweeps)).toBeCloseTo(ringPerimeter(fine), 3);
    }
  });

  it('keeps its corners, and is itself without arcs', () => {
    expect(flattenArcs(square, [], true, 0.01)).toBe(square);
    const curved = flattenArcs(square, [0, 1], true, 0.01);
    for (const corner of square) expect(curved).toContain(corner);
    expect(curved.slice(0, 2)).toEqual(square.slice(0, 2));
    const open = flattenArcs(square, [0, 0, 0, 1], false, 0.01);
    expect(open).toEqual(square); // an open line has no leg back to its start
    expect(nearestOnSegment(curved[2] ?? at(0, 0), at(10, 0), at(10, 10)).distance).toBeGreaterThan(0.01);
  });
});
