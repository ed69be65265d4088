import {
  cutAngleAt,
  degrees,
  errorEllipse,
  intersectCircles,
  type Point,
  pointAtAzimuth,
  radians,
  tapeFixCovariance,
} from '@footmark/geometry';
import { inverse, Matrix } from 'ml-matrix';
import { describe, expect, it } from 'vitest';

const origin: Point = { x: 0, y: 0 };

function cuts(c1: Point, r1: number, c2: Point, r2: number) {
  const found = intersectCircles(c1, r1, c2, r2);
  if (!found.ok) throw new Error(found.code);
  return found.value;
}

describe('two tapes', () => {
  it('meet where the textbook formula says', () => {
    // x = (r1² − r2² + d²)/(2d), y = ±√(r1² − x²) by hand: d 10 with 6 and 8 is a 3-4-5 triangle, d 40 with 30 and 50 too.
    const [left, right] = cuts(origin, 6, { x: 10, y: 0 }, 8).points;
    expect([left.x, left.y, right.x, right.y].map((v) => Number(v.toFixed(12)))).toEqual([
      3.6, 4.8, 3.6, -4.8,
    ]);
    const [above] = cuts(origin, 30, { x: 40, y: 0 }, 50).points;
    expect([above.x, above.y]).toEqual([0, 30]);
  });

  it('meet where a published program printed it', () => {
    // J. Squire, circle_circle_c.out (userpages.umbc.edu/~squire/download/circle_circle_c.out), six decimals printed.
    const [left, right] = cuts({ x: -0.1, y: -0.2 }, 2, { x: 2, y: 1 }, 2.1).points;
    expect(left.x).toBeCloseTo(0.055856, 6);
    expect(left.y).toBeCloseTo(1.793918, 6);
    expect(right.x).toBeCloseTo(1.696964, 6);
    expect(right.y).toBeCloseTo(-1.078021, 6);
  });

  it('of 25 and 20 over a base of 30 cut at 82.8°', () => {
    // Computed for the design document: x 18.75, y 16.536, cut 82.8°.
    const found = cuts(origin, 25, { x: 30, y: 0 }, 20);
    expect(found.points[0].x).toBeCloseTo(18.75, 10);
    expect(found.points[0].y).toBeCloseTo(16.536, 3);
    expect(degrees(found.cutAngle)).toBeCloseTo(82.8, 1);
  });
});

describe('the error of a two-tape fix', () => {
  // sigma_pos = s √2 / sin(cut), computed independently: 1.414 s at 90°, 2.828 s at 30° and 150°.
  it.each([
    // biome-ignore lint/suspicious/noApproximativeNumericConstant: the figure as tabled
    [90, 1.414],
    [30, 2.828],
    [150, 2.828],
  ])('with equal tapes cutting at %s° is %s sigma', (cut, factor) => {
    const a = pointAtAzimuth(origin, 0.4, 12);
    const b = pointAtAzimuth(origin, 0.4 + radians(cut), 7);
    expect(degrees(cutAngleAt(origin, a, b))).toBeCloseTo(cut, 10);
    const c = tapeFixCovariance({ p: origin, a, b, sigmaA: 0.02, sigmaB: 0.02 });
    expect(Math.sqrt(c.sxx + c.syy) / 0.02).toBeCloseTo(factor, 3);
  });

  it('is J⁻¹ diag(σ²) J⁻ᵀ as a matrix library works it out', () => {
    const [p, a, b] = [
      { x: 18.75, y: 16.536 },
      { x: 0, y: 0 },
      { x: 30, y: 0 },
    ];
    const [sigmaA, sigmaB] = [0.03, 0.01];
    const row = (c: Point) => {
      const length = Math.hypot(p.x - c.x, p.y - c.y);
      return [(p.x - c.x) / length, (p.y - c.y) / length];
    };
    const back = inverse(new Matrix([row(a), row(b)]));
    const expected = back.mmul(Matrix.diag([sigmaA ** 2, sigmaB ** 2])).mmul(back.transpose());
    const c = tapeFixCovariance({ p, a, b, sigmaA, sigmaB });
    expect(c.sxx / expected.get(0, 0)).toBeCloseTo(1, 12);
    expect(c.sxy / expected.get(0, 1)).toBeCloseTo(1, 12);
    expect(c.syy / expected.get(1, 1)).toBeCloseTo(1, 12);
  });
});

describe('the standard ellipse', () => {
  // Eigenvalues computed independently by the formulas of Ghilani, Adjustment Computations, ch. 19.
  it('of [[4, 0], [0, 1]]', () => {
    expect(errorEllipse({ sxx: 4, sxy: 0, syy: 1 })).toEqual({ semiMajor: 2, semiMinor: 1, theta: 0 });
  });

  it('of [[1.3, 0.4], [0.4, 0.9]], and its 95 % multiple', () => {
    const { semiMajor, semiMinor, theta } = errorEllipse({ sxx: 1.3, sxy: 0.4, syy: 0.9 });
    expect(semiMajor).toBeCloseTo(1.24387, 5);
    expect(semiMinor).toBeCloseTo(0.80795, 5);
    expect(degrees(theta)).toBeCloseTo(31.717, 3);
    expect(2.447747 * semiMajor).toBeCloseTo(3.04468, 4);
    expect(2.447747 * semiMinor).toBeCloseTo(1.97766, 4);
  });
});
