import {
  compassBalance,
  type Point,
  radians,
  ringArea,
  type TraverseLeg,
  traverseClosure,
} from '@footmark/geometry';
import { describe, expect, it } from 'vitest';

/** Degrees, minutes and seconds as radians. */
function dms(degrees: number, minutes = 0, seconds = 0): number {
  return radians(degrees + minutes / 60 + seconds / 3600);
}

function course(distance: number, azimuth: number): TraverseLeg {
  return { kind: 'straight', azimuth, distance };
}

/** The corners after each side but the last, from the first corner. */
function cornersFrom(first: Point, sides: readonly Point[]): readonly Point[] {
  const corners = [first];
  for (const side of sides.slice(0, -1)) {
    const from = corners.at(-1) ?? first;
    corners.push({ x: from.x + side.x, y: from.y + side.y });
  }
  return corners;
}

// Source: Wolf & Ghilani, Elementary Surveying, Ex. 10.4 (feet). Its tables are rounded at every step, hence the tolerance.
describe('the compass rule on a published traverse of five sides', () => {
  const legs = [
    course(647.25, dms(126, 55, 17)),
    course(203.03, dms(178, 18, 58)),
    course(720.35, dms(15, 31, 54)),
    course(610.24, dms(284, 35, 20)),
    course(285.13, dms(206, 9, 42)),
  ];
  const closure = traverseClosure(legs);
  const balanced = compassBalance(legs);
  const TOLERANCE_FT = 0.002;

  const expectAll = (found: readonly number[], wanted: readonly number[]) => {
    expect(found).toHaveLength(wanted.length);
    for (const [i, value] of wanted.entries()) {
      expect(Math.abs((found[i] ?? Number.NaN) - value)).toBeLessThanOrEqual(TOLERANCE_FT);
    }
  };

  it('has its departures and latitudes', () => {
    expectAll(
      closure.sides.map((s) => s.x),
      [517.451, 5.966, 192.889, -590.565, -125.715],
    );
    expectAll(
      closure.sides.map((s) => s.y),
      [-388.815, -202.942, 694.045, 153.708, -255.919],
    );
  });

  it('has its misclosure and ratio', () => {
    expectAll([closure.misclosure.x, closure.misclosure.y], [0.026, 0.077]);
    expect(closure.perimeter).toBeCloseTo(2466, 9);
    expect(closure.misclosureLength).toBeCloseTo(0.0802, 4);
    // from the unrounded sums 0.0256 and 0.0760: 1:30,741
    expect(Math.round(closure.ratio)).toBe(30741);
  });

  it('has its balanced sides, coordinates and area', () => {
    expectAll(
      balanced.map((s) => s.x),
      [517.444, 5.964, 192.881, -590.571, -125.718],
    );
    expectAll(
      balanced.map((s) => s.y),
      [-388.835, -202.949, 694.022, 153.689, -255.928],
    );
    const corners = cornersFrom({ x: 10000, y: 5000 }, balanced);
    expectAll(
      corners.map((p) => p.x),
      [10000, 10517.444, 10523.408, 10716.289, 10125.718],
    );
    expectAll(
      corners.map((p) => p.y),
      [5000, 4611.165, 4408.216, 5102.239, 5255.928],
    );
    expect(Math.abs(Math.abs(ringArea(corners)) - 272585)).toBeLessThan(1);
  });

  it('closes after balancing', () => {
    expect(balanced.reduce((sum, s) => sum + s.x, 0)).toBeCloseTo(0, 9);
    expect(balanced.reduce((sum, s) => sum + s.y, 0)).toBeCloseTo(0, 9);
  });
});

// Source: a worked page of a surveying text (scribd 493615208); it rounds the shares to four places.
describe('the compass rule on a published traverse of four sides in quadrant bearings', () => {
  it('has its balanced latitudes', () => {
    const legs = [
      course(80.4, dms(76)),
      course(46.3, dms(180 - 36)),
      course(72.8, dms(180 + 61)),
      course(68, dms(360 - 38)),
    ];
    const latitudes = compassBalance(legs).map((s) => s.y);
    for (const [i, published] of [19.3653, -37.5063, -35.3716, 53.5126].entries()) {
      expect(Math.abs((latitudes[i] ?? Number.NaN) - published)).toBeLessThan(0.0005);
    }
    // computed from the same sides without rounding on the way
    for (const [i, exact] of [19.3653, -37.5066, -35.3713, 53.5126].entries()) {
      expect(latitudes[i]).toBeCloseTo(exact, 4);
    }
  });
});
