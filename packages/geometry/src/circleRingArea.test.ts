import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { circleRegionArea, circleRingArea } from './circleRingArea';
import { unionOf } from './combineRegions';
import { type Point, rotate } from './point';
import { ringArea } from './ring';

const at = (x: number, y: number): Point => ({ x, y });
const box = (x: number, y: number, width: number, height: number) => [
  at(x, y),
  at(x + width, y),
  at(x + width, y + height),
  at(x, y + height),
];
const between = (min: number, max: number) =>
  fc.integer({ min: Math.round(min * 1e6), max: Math.round(max * 1e6) }).map((n) => n / 1e6);
const ring = fc.array(fc.record({ x: between(-10, 10), y: between(-10, 10) }), {
  minLength: 3,
  maxLength: 9,
});
const radius = between(0.5, 9);
const SEED = { seed: 4970 };

/** Area of a segment of height h of a circle, r² acos((r−h)/r) − (r−h) √(2rh−h²): any table of plane figures. */
function segment(r: number, h: number): number {
  return r * r * Math.acos((r - h) / r) - (r - h) * Math.sqrt(2 * r * h - h * h);
}

describe('circleRingArea', () => {
  // AS 4970-2009 speaks of a trench along a chord; two segments' difference, worked by hand: 5.999 % of 36 π
  it('is 6.785 m² for a strip 0.6 m wide, 2 m from the centre of a 6 m circle', () => {
    const area = circleRingArea(at(0, 0), 6, box(-10, 1.7, 20, 0.6));
    expect(area).toBeCloseTo(segment(6, 4.3) - segment(6, 3.7), 12);
    expect(area).toBeCloseTo(6.785, 3);
    expect(area / (36 * Math.PI)).toBeCloseTo(0.05999, 5);
  });

  it('is the whole disc, the whole ring or nothing when one holds the other or they lie apart', () => {
    expect(circleRingArea(at(1, 1), 2, box(-10, -10, 20, 20))).toBeCloseTo(4 * Math.PI, 12);
    expect(circleRingArea(at(0, 0), 9, box(-1, -2, 3, 4))).toBeCloseTo(12, 12);
    expect(circleRingArea(at(0, 0), 1, box(3, 3, 1, 1))).toBeCloseTo(0, 12);
    expect(circleRingArea(at(0, 0), 0, box(-1, -1, 2, 2))).toBe(0);
    expect(circleRingArea(at(0, 0), 3, [])).toBe(0);
  });

  it('is half or a quarter of the disc where edges run through the centre, and nothing where one touches', () => {
    expect(circleRingArea(at(0, 0), 2, box(-5, 0, 10, 5))).toBeCloseTo(2 * Math.PI, 12);
    expect(circleRingArea(at(0, 0), 2, box(0, 0, 5, 5))).toBeCloseTo(Math.PI, 12);
    expect(circleRingArea(at(0, 0), 2, box(-5, 2, 10, 5))).toBeCloseTo(0, 12);
  });

  it('turns its sign with the sense of the ring', () => {
    fc.assert(
      fc.property(ring, radius, (corners, r) => {
        const back = circleRingArea(at(0, 0), r, corners.toReversed());
        expect(back).toBeCloseTo(-circleRingArea(at(0, 0), r, corners), 9);
      }),
      SEED,
    );
  });

  it('is the same turned, mirrored and moved, and grows with the square of the scale', () => {
    fc.assert(
      fc.property(ring, radius, between(0, 6), between(0.001, 1000), (corners, r, angle, k) => {
        const centre = at(1, -2);
        const area = circleRingArea(centre, r, corners);
        const turned = corners.map((p) => rotate(p, angle));
        expect(circleRingArea(rotate(centre, angle), r, turned)).toBeCloseTo(area, 9);
        const mirrored = corners.map((p) => at(-p.x, p.y));
        expect(circleRingArea(at(-1, -2), r, mirrored)).toBeCloseTo(-area, 9);
        const far = corners.map((p) => at(p.x + 1e6, p.y - 1e6));
        expect(circleRingArea(at(1e6 + 1, -1e6 - 2), r, far)).toBeCloseTo(area, 6);
        const larger = corners.map((p) => at(p.x * k, p.y * k));
        const scaled = circleRingArea(at(k, -2 * k), r * k, larger);
        expect(scaled / k / k).toBeCloseTo(area, 9);
      }),
      SEED,
    );
  });

  it('adds up: a ring and what is left of the plane have the disc between them', () => {
    fc.assert(
      fc.property(ring, radius, (corners, r) => {
        const region = unionOf([[corners]]);
        const inside = circleRegionArea(at(0, 0), r, region);
        const frame = [box(-50, -50, 100, 100), ...region.map((hole) => hole.toReversed())];
        expect(inside + circleRegionArea(at(0, 0), r, frame)).toBeCloseTo(Math.PI * r * r, 6);
        expect(inside).toBeLessThanOrEqual(region.reduce((sum, one) => sum + ringArea(one), 0) + 1e-9);
      }),
      SEED,
    );
  });

  it('throws for a radius that is none', () => {
    expect(() => circleRingArea(at(0, 0), -1, [])).toThrow(RangeError);
    expect(() => circleRingArea(at(0, 0), Number.NaN, [])).toThrow(RangeError);
  });
});
