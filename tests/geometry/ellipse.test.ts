import {
  boundingRectangleAlong,
  degrees,
  distance,
  ellipseOutline,
  errorEllipse,
  type PlaneCovariance,
  type Point,
  radians,
  ringArea,
  rotate,
  tapeFixCovariance,
} from '@footmark/geometry';
import { inverse, Matrix } from 'ml-matrix';
import { describe, expect, it } from 'vitest';

/** √χ² of 0.95 with two degrees of freedom, computed independently by a statistics library. */
const FACTOR_95 = 2.447747;

const centre: Point = { x: 12.5, y: -3 };
const tilted: PlaneCovariance = { sxx: 1.3, sxy: 0.4, syy: 0.9 };

/** A linear congruential generator modulo 2^32 (Numerical Recipes constants, from memory): values in [0, 1). */
function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

/** Any covariance: standard deviations of 1 mm to 1 m at any correlation. */
function covariances(seed: number, count: number): readonly PlaneCovariance[] {
  const random = seeded(seed);
  return Array.from({ length: count }, () => {
    const [sx, sy, correlation] = [0.001 + random(), 0.001 + random(), 1.98 * random() - 0.99];
    return { sxx: sx * sx, sxy: correlation * sx * sy, syy: sy * sy };
  });
}

/** The ellipse `factor` times the standard one by the other way: the square root of the matrix (Cholesky) takes the unit circle to it. */
function sampledEllipse(
  { sxx, sxy, syy }: PlaneCovariance,
  factor: number,
  samples: number,
): readonly Point[] {
  const l11 = Math.sqrt(sxx);
  const l21 = sxy / l11;
  const l22 = Math.sqrt(syy - l21 * l21);
  return Array.from({ length: samples }, (_, i) => {
    const angle = (2 * Math.PI * i) / samples;
    return {
      x: factor * l11 * Math.cos(angle),
      y: factor * (l21 * Math.cos(angle) + l22 * Math.sin(angle)),
    };
  });
}

describe('the outline of an error ellipse', () => {
  it('lies where (p − c)ᵀ C⁻¹ (p − c) is the factor squared, as a matrix library inverts C', () => {
    for (const covariance of covariances(1, 100)) {
      const { semiMajor, semiMinor, theta } = errorEllipse(covariance);
      const { sxx, sxy, syy } = covariance;
      const weight = inverse(
        new Matrix([
          [sxx, sxy],
          [sxy, syy],
        ]),
      );
      const ring = ellipseOutline(centre, FACTOR_95 * semiMajor, FACTOR_95 * semiMinor, theta, 24);
      const levels = ring.map((p) => {
        const off = Matrix.columnVector([p.x - centre.x, p.y - centre.y]);
        return off.transpose().mmul(weight).mmul(off).get(0, 0) / FACTOR_95 ** 2;
      });
      for (const level of levels) expect(level).toBeCloseTo(1, 6);
    }
  });

  it('begins at the end of the major axis and runs counter-clockwise', () => {
    const ring = ellipseOutline(centre, 5, 2, radians(30), 4);
    const expected = [rotate({ x: 5, y: 0 }, radians(30)), rotate({ x: 0, y: 2 }, radians(30))];
    for (const [i, p] of expected.entries()) {
      const corner = ring[i] ?? centre;
      expect(distance(corner, { x: centre.x + p.x, y: centre.y + p.y })).toBeLessThan(1e-12);
    }
    expect(ring.length).toBe(4);
    expect(ringArea(ring)).toBeGreaterThan(0);
  });

  it('has the area n/2·sin(2π/n)·a·b of the inscribed polygon that a circle squeezed has', () => {
    // By hand: a regular n-gon in the unit circle has n/2·sin(2π/n), and squeezing multiplies areas.
    for (const count of [3, 4, 17, 72, 720]) {
      const expected = (count / 2) * Math.sin((2 * Math.PI) / count) * 5 * 2;
      expect(ringArea(ellipseOutline(centre, 5, 2, 0.7, count))).toBeCloseTo(expected, 10);
    }
    const asDrawn = ellipseOutline(centre, 5, 2, 0.7);
    expect(1 - ringArea(asDrawn) / (Math.PI * 10)).toBeLessThan(0.002);
  });

  it('stays as near as it says', () => {
    for (const count of [3, 8, 72]) {
      const ring = ellipseOutline({ x: 0, y: 0 }, 5, 2, 0, count);
      const fine = ellipseOutline({ x: 0, y: 0 }, 5, 2, 0, count * 50);
      const gaps = fine.map((p, k) => {
        const [a, b] = [ring[Math.floor(k / 50)], ring[(Math.floor(k / 50) + 1) % count]];
        if (a === undefined || b === undefined) return Infinity;
        return ((b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x)) / -distance(a, b);
      });
      expect(Math.max(...gaps)).toBeLessThanOrEqual(5 * (1 - Math.cos(Math.PI / count)) + 1e-12);
      expect(Math.max(...gaps)).toBeGreaterThan(0);
    }
  });

  it('can be a point or a stroke, but not endless, negative or of two corners', () => {
    expect(ellipseOutline(centre, 0, 0, 1, 3)).toEqual([centre, centre, centre]);
    expect(ringArea(ellipseOutline(centre, 3, 0, 1))).toBeCloseTo(0, 12);
    expect(() => ellipseOutline(centre, Infinity, 1, 0)).toThrow(RangeError);
    expect(() => ellipseOutline(centre, 1, -1, 0)).toThrow(RangeError);
    expect(() => ellipseOutline(centre, 1, 1, 0, 2)).toThrow(RangeError);
    expect(() => ellipseOutline(centre, 1, 1, 0, 7.5)).toThrow(RangeError);
  });
});

describe('the rectangle along an azimuth', () => {
  it('of 4 m² east and 1 m² north is 2 by 1 along east and 1 by 2 along north', () => {
    const covariance = { sxx: 4, sxy: 0, syy: 1 };
    const east = boundingRectangleAlong(covariance, 1, radians(90));
    expect([east.along, east.across]).toEqual([expect.closeTo(2, 12), expect.closeTo(1, 12)]);
    const north = boundingRectangleAlong(covariance, 1, 0);
    expect([north.along, north.across]).toEqual([expect.closeTo(1, 12), expect.closeTo(2, 12)]);
  });

  it('along the major axis has the semi-axes of [[1.3, 0.4], [0.4, 0.9]] at 95 %', () => {
    // Computed independently by the formulas of Ghilani, Adjustment Computations, ch. 19: theta 31.717°, 3.04468 and 1.97766.
    const { along, across } = boundingRectangleAlong(tilted, FACTOR_95, radians(90 - 31.717));
    expect(along).toBeCloseTo(3.04468, 4);
    expect(across).toBeCloseTo(1.97766, 4);
  });

  it('just holds the ellipse, whichever way it lies', () => {
    const random = seeded(2);
    for (const covariance of covariances(3, 60)) {
      const samples = sampledEllipse(covariance, FACTOR_95, 3600);
      const azimuth = 2 * Math.PI * random();
      // the sides by turning the samples so that the azimuth is +y
      const turned = samples.map((p) => rotate(p, azimuth));
      const { along, across } = boundingRectangleAlong(covariance, FACTOR_95, azimuth);
      const [alongMost, acrossMost] = [
        Math.max(...turned.map((p) => p.y)),
        Math.max(...turned.map((p) => Math.abs(p.x))),
      ];
      expect(alongMost / along).toBeLessThan(1 + 1e-12);
      expect(acrossMost / across).toBeLessThan(1 + 1e-12);
      expect(alongMost / along).toBeGreaterThan(1 - 1e-6);
      expect(acrossMost / across).toBeGreaterThan(1 - 1e-6);
    }
  });

  it('at 95 % holds the share of normal errors that both its sides leave, more than 95 %', () => {
    // Box–Muller from 40,000 seeded pairs. Independent axes: erf(2.4477/√2)² = 0.97146, computed independently.
    // Binomial error of the count: √(0.0278/40000) = 0.0008; four of it are allowed.
    const random = seeded(11);
    let inside = 0;
    const { along, across } = boundingRectangleAlong({ sxx: 4, sxy: 0, syy: 1 }, FACTOR_95, radians(90));
    for (let i = 0; i < 40000; i += 1) {
      const radius = Math.sqrt(-2 * Math.log(1 - random()));
      const angle = 2 * Math.PI * random();
      if (Math.abs(2 * radius * Math.cos(angle)) <= along && Math.abs(radius * Math.sin(angle)) <= across)
        inside += 1;
    }
    expect(Math.abs(inside / 40000 - 0.97146)).toBeLessThan(0.0034);
  });

  it('is the same read from the other end, swaps its sides at a right angle, and turns, mirrors and scales with the covariance', () => {
    for (const [i, covariance] of covariances(4, 50).entries()) {
      const { sxx, sxy, syy } = covariance;
      const azimuth = 0.37 * i;
      const { along, across } = boundingRectangleAlong(covariance, 2, azimuth);
      const same = (other: Readonly<{ along: number; across: number }>, k = 1) => {
        expect(other.along / k / along).toBeCloseTo(1, 9);
        expect(other.across / k / across).toBeCloseTo(1, 9);
      };
      same(boundingRectangleAlong(covariance, 2, azimuth + Math.PI));
      const square = boundingRectangleAlong(covariance, 2, azimuth + Math.PI / 2);
      same({ along: square.across, across: square.along });
      same(boundingRectangleAlong({ sxx, sxy: -sxy, syy }, 2, -azimuth));
      same(boundingRectangleAlong({ sxx: syy, sxy, syy: sxx }, 2, Math.PI / 2 - azimuth));
      for (const k of [1e-3, 1, 1e3, 1e6]) {
        same(boundingRectangleAlong({ sxx: sxx * k * k, sxy: sxy * k * k, syy: syy * k * k }, 2, azimuth), k);
        same(boundingRectangleAlong(covariance, 2 * k, azimuth), k);
      }
      // along² + across² is the trace whichever way it lies
      expect((along ** 2 + across ** 2) / (4 * (sxx + syy))).toBeCloseTo(1, 12);
    }
  });

  it('is nothing without error, endless where nothing is fixed, and never rounds to a negative square', () => {
    expect(boundingRectangleAlong({ sxx: 0, sxy: 0, syy: 0 }, 2, 1)).toEqual({ along: 0, across: 0 });
    const [p, a, b] = [
      { x: 5, y: 0 },
      { x: 0, y: 0 },
      { x: 9, y: 0 },
    ];
    const unfixed = tapeFixCovariance({ p, a, b, sigmaA: 1, sigmaB: 1 });
    expect(boundingRectangleAlong(unfixed, 2, 0)).toEqual({ along: Infinity, across: Infinity });
    const stroke = { sxx: 0.1 ** 2, sxy: 0.1 * 0.3, syy: 0.3 ** 2 };
    const { theta } = errorEllipse(stroke);
    expect(degrees(theta)).toBeCloseTo(71.565, 3);
    expect(boundingRectangleAlong(stroke, 2, Math.PI / 2 - theta).across).toBeLessThan(1e-7);
    expect(() => boundingRectangleAlong(stroke, -1, 0)).toThrow(RangeError);
  });
});
