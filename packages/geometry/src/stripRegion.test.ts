import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { intersectionArea, regionArea } from './combineRegions';
import { type Point, rotate } from './point';
import { nearestOnPolyline } from './polyline';
import type { Region } from './region';
import { pointInRing, ringArea } from './ring';
import { stripRegion } from './stripRegion';

const at = (x: number, y: number): Point => ({ x, y });
const even = (points: readonly Point[], left: number, right = left): Region =>
  stripRegion(points.map((p) => ({ at: p, left, right })));
const between = (min: number, max: number) =>
  fc.integer({ min: Math.round(min * 1e6), max: Math.round(max * 1e6) }).map((n) => n / 1e6);
const line = fc.array(fc.record({ x: between(-10, 10), y: between(-10, 10) }), {
  minLength: 2,
  maxLength: 7,
});
const holds = (region: Region, p: Point) =>
  region.filter((r) => pointInRing(p, r) === 'inside').length % 2 === 1;
const SEED = { seed: 652 };

describe('stripRegion', () => {
  it('is a rectangle along a straight line, as far to each side as asked', () => {
    const [ring = [], ...others] = even([at(0, 0), at(4, 0), at(10, 0)], 2, 1);
    expect(others).toEqual([]);
    expect(ring).toHaveLength(4);
    expect(ringArea(ring)).toBeCloseTo(30, 12);
    expect(ring.map((p) => p.y).sort((a, b) => a - b)).toEqual([-1, -1, 2, 2]);
  });

  it('has a mitred outer and inner corner at a right angle', () => {
    const [ring = []] = even([at(0, 0), at(10, 0), at(10, 10)], 1);
    expect(ring).toHaveLength(6);
    expect(ringArea(ring)).toBeCloseTo(40, 12);
    expect(ring).toContainEqual(at(11, -1));
    expect(ring).toContainEqual(at(9, 1));
  });

  it('cuts a sharp corner off at the half width, and a fold square', () => {
    const [fold = []] = even([at(0, 0), at(10, 0), at(2, 0)], 1);
    expect(ringArea(fold)).toBeCloseTo(22, 9);
    const spike = even([at(0, 0), at(10, 0), at(0, 2)], 1);
    const reach = Math.max(...spike.flat().map((p) => p.x));
    expect(reach).toBeGreaterThan(11);
    expect(reach).toBeLessThan(11 + 0.2);
  });

  it('tapers between points and steps where two lie at one place', () => {
    const taper = stripRegion([
      { at: at(0, 0), left: 1, right: 0 },
      { at: at(6, 0), left: 3, right: 0 },
      { at: at(6, 0), left: 1, right: 1 },
      { at: at(8, 0), left: 1, right: 1 },
    ]);
    expect(taper).toHaveLength(1);
    expect(regionArea(taper)).toBeCloseTo(12 + 4, 12);
  });

  it('leaves a yard free that it goes all round', () => {
    const round = even([at(0, 0), at(10, 0), at(10, 10), at(0, 10), at(0, 0)], 1);
    expect(round.map(ringArea).map((a) => Math.round(a))).toContain(-64);
  });

  it('is nothing along a line without length or width', () => {
    expect(even([], 1)).toEqual([]);
    expect(even([at(3, 3)], 1)).toEqual([]);
    expect(even([at(3, 3), at(3, 3)], 1)).toEqual([]);
    expect(even([at(0, 0), at(9, 0)], 0)).toEqual([]);
    expect(() => even([at(0, 0), at(9, 0)], -1)).toThrow(RangeError);
    expect(() => even([at(0, 0), at(9, 0)], Number.NaN)).toThrow(RangeError);
  });

  it('holds all that lies square beside or round a corner of the line, and nothing beyond the mitre', () => {
    fc.assert(
      fc.property(
        line,
        between(0.2, 3),
        fc.array(fc.record({ x: between(-14, 14), y: between(-14, 14) })),
        (points, half, places) => {
          const region = even(points, half);
          for (const p of places) {
            const near = nearestOnPolyline(p, points, false);
            const length = nearestOnPolyline(points.at(-1) ?? p, points, false).along;
            const atEnd = near.along < 1e-6 || near.along > length - 1e-6;
            if (near.distance < half - 1e-6 && !atEnd) expect(holds(region, p)).toBe(true);
            if (near.distance > 2 * half + 1e-6) expect(holds(region, p)).toBe(false);
          }
        },
      ),
      { ...SEED, numRuns: 200 },
    );
  });

  it('swaps its sides when the line is mirrored or walked the other way, and turns with it', () => {
    fc.assert(
      fc.property(line, between(0, 3), between(0.1, 3), between(0, 6), (points, left, right, angle) => {
        const strip = even(points, left, right);
        const area = regionArea(strip);
        const back = even(points.toReversed(), right, left);
        expect(intersectionArea(strip, back)).toBeCloseTo(area, 5);
        const mirrored = even(
          points.map((p) => at(-p.x, p.y)),
          right,
          left,
        );
        expect(regionArea(mirrored)).toBeCloseTo(area, 5);
        expect(
          regionArea(
            even(
              points.map((p) => rotate(p, angle)),
              left,
              right,
            ),
          ),
        ).toBeCloseTo(area, 5);
      }),
      { ...SEED, numRuns: 100 },
    );
  });
});
