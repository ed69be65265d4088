// Sources named beside each check. 'Computed' = with a statistics library, for these checks.
import { chiSquareQuantile, ellipseFactor, ellipseFactor95, errorEllipse } from '@footmark/adjust';
import { describe, expect, it } from 'vitest';

describe('ellipse factors', () => {
  it('for a known sigma: the customary table, and 2.447746831 at 95 % (FGDC-STD-007.3-1998 appendix 3-A: 2.4477)', () => {
    expect(ellipseFactor95).toBeCloseTo(2.447746831, 9);
    expect(ellipseFactor(0.95)).toBeCloseTo(ellipseFactor95, 14);
    expect(ellipseFactor(1 - Math.exp(-0.5))).toBeCloseTo(1, 12); // 39.35 %
    expect(ellipseFactor(0.5)).toBeCloseTo(1.17741, 5);
    expect(ellipseFactor(0.9)).toBeCloseTo(2.14597, 5);
    expect(ellipseFactor(0.99)).toBeCloseTo(3.03485, 5);
  });

  it('for an estimated sigma: F tables, F(.95; 2, 1) = 199.5 and F(.95; 2, 3) = 9.552 (from memory)', () => {
    expect(ellipseFactor(0.95, 1)).toBeCloseTo(19.97, 1);
    expect(ellipseFactor(0.95, 1) ** 2 / 2).toBeCloseTo(199.5, 1);
    expect(ellipseFactor(0.95, 3)).toBeCloseTo(4.371, 3);
    expect(ellipseFactor(0.95, 3) ** 2 / 2).toBeCloseTo(9.552, 3);
    expect(ellipseFactor(0.95, 1e9)).toBeCloseTo(ellipseFactor95, 7);
  });
});

describe('standard ellipse (Ghilani, Adjustment Computations, ch. 19; numbers computed)', () => {
  it('of a diagonal covariance', () => {
    expect(errorEllipse({ xx: 4, xy: 0, yy: 1 })).toEqual({ semiMajor: 2, semiMinor: 1, direction: 0 });
  });

  it('of a full covariance, and at 95 %', () => {
    const { semiMajor, semiMinor, direction } = errorEllipse({ xx: 1.3, xy: 0.4, yy: 0.9 });
    expect(semiMajor ** 2).toBeCloseTo(1.54721, 5);
    expect(semiMinor ** 2).toBeCloseTo(0.65279, 5);
    expect(semiMajor).toBeCloseTo(1.24387, 5);
    expect(semiMinor).toBeCloseTo(0.80795, 5);
    expect((direction * 180) / Math.PI).toBeCloseTo(31.717, 3);
    expect(ellipseFactor95 * semiMajor).toBeCloseTo(3.04468, 5);
    expect(ellipseFactor95 * semiMinor).toBeCloseTo(1.97766, 5);
  });
});

describe('chi-square quantile', () => {
  it('has the table values (any statistics text, three decimals; from memory, 5.991464547 computed)', () => {
    expect(chiSquareQuantile(0.95, 2)).toBeCloseTo(5.991464547, 9);
    expect(chiSquareQuantile(0.95, 1)).toBeCloseTo(3.841, 3);
    expect(chiSquareQuantile(0.99, 1)).toBeCloseTo(6.635, 3);
    expect(chiSquareQuantile(0.95, 5)).toBeCloseTo(11.07, 3);
    expect(chiSquareQuantile(0.025, 10)).toBeCloseTo(3.247, 3);
    expect(chiSquareQuantile(0.975, 10)).toBeCloseTo(20.483, 3);
    expect(chiSquareQuantile(0.95, 30)).toBeCloseTo(43.773, 3);
    expect(chiSquareQuantile(0.95, 100)).toBeCloseTo(124.342, 3);
  });

  it('is the square of the normal quantile for one degree: 1.959963985² (normal tables)', () => {
    expect(Math.sqrt(chiSquareQuantile(0.95, 1))).toBeCloseTo(1.959963985, 9);
    expect(Math.sqrt(chiSquareQuantile(0.999, 1))).toBeCloseTo(3.290526731, 9);
  });

  it('agrees with the closed form for even degrees: 1 − P = exp(−x/2) Σ (x/2)ᵏ/k!', () => {
    for (const dof of [2, 4, 10, 60, 500]) {
      for (const p of [1e-6, 0.001, 0.025, 0.5, 0.975, 0.999, 0.999999]) {
        const half = chiSquareQuantile(p, dof) / 2;
        let term = Math.exp(-half);
        let above = term;
        for (let k = 1; k < dof / 2; k++) {
          term *= half / k;
          above += term;
        }
        expect(Math.abs(1 - above - p), `p ${p}, dof ${dof}`).toBeLessThan(2e-13);
      }
    }
  });

  it('refuses what is no probability or no degree of freedom', () => {
    expect(() => chiSquareQuantile(1, 2)).toThrow('p is 1');
    expect(() => chiSquareQuantile(Number.NaN, 2)).toThrow('p is NaN');
    expect(() => chiSquareQuantile(0.5, 0)).toThrow('dof is 0');
  });
});
