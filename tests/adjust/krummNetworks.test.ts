// Source: Krumm, Geodetic Network Adjustment Examples, Univ. Stuttgart, Rev 3.5 (2020), with the textbook that it quotes named
// at each example. 'Published' values are printed there to four decimals; 'computed' ones were found by an independent
// program for these checks, to six digits.
import { errorEllipse } from '@footmark/adjust';
import { describe, expect, it } from 'vitest';
import { fixed, solved, tape, unknown } from './solved';

const PRINTED = 0.51e-4; // half a unit of the last printed decimal, metres

const expectNear = (got: number | undefined, want: number, tolerance: number) => {
  expect(Math.abs((got ?? Number.NaN) - want), `${got} for ${want}`).toBeLessThanOrEqual(tolerance);
};

describe('three tapes to one point (Strang & Borre 1997, examples 10.1 and 12.4)', () => {
  const p = unknown(0);
  const result = solved({
    estimates: [170.71, 170.71],
    observations: [
      tape('d1', fixed(170.71, 270.71), p, 100.01, 0.01),
      tape('d2', fixed(100, 100), p, 100.02, 0.01),
      tape('d3', fixed(241.42, 100), p, 100.03, 0.01),
    ],
  });

  it('has the published point and standard deviations a posteriori', () => {
    expect(result.status).toBe('converged');
    expectNear(result.estimates[0], 170.7029, PRINTED);
    expectNear(result.estimates[1], 170.7234, PRINTED);
    const { xx, yy } = result.covarianceBlock(0);
    expectNear((result.sigma0 ?? 0) * Math.sqrt(xx), 0.03303, 0.51e-5);
    expectNear((result.sigma0 ?? 0) * Math.sqrt(yy), 0.02335, 0.51e-5);
  });

  it('has the computed residuals, sum of squares and ellipse', () => {
    expect(result.dof).toBe(1);
    expectNear(result.residuals[0], -0.023356, 0.51e-6);
    expectNear(result.residuals[1], -0.016516, 0.51e-6);
    expectNear(result.residuals[2], -0.016512, 0.51e-6);
    expectNear(result.vTPv, 10.909363, 0.51e-6);
    expectNear(result.sigma0 ?? 0, 3.302932, 0.51e-6);
    const ellipse = errorEllipse(result.covarianceBlock(0));
    expectNear((result.sigma0 ?? 0) * ellipse.semiMajor, 0.033032, 0.51e-6);
    expectNear((result.sigma0 ?? 0) * ellipse.semiMinor, 0.023354, 0.51e-6);
    expectNear(ellipse.direction, 0, 1e-3);
  });

  it('has standardised residuals of one size, √vᵀPv, as one degree of freedom must have', () => {
    for (const w of result.standardizedResiduals) expectNear(Math.abs(w), 3.302932, 0.51e-6);
  });

  it('fails the global test, as 10.9 against χ²(1) must', () => {
    expect(result.globalTest?.passed).toBe(false);
    expect(result.globalTest?.statistic).toBe(result.vTPv);
  });
});

describe('two points by five distances (Benning 2011, example 8-2)', () => {
  const one = fixed(0, 1000);
  const two = fixed(1000, 1000);
  const result = solved({
    estimates: [0, 0, 1000, 0],
    observations: [
      tape('1-3', one, unknown(0), 1000.02, 0.01),
      tape('1-4', one, unknown(2), 1414.2, 0.01),
      tape('2-3', two, unknown(0), 1414.24, 0.01),
      tape('2-4', two, unknown(2), 999.98, 0.01),
      tape('3-4', unknown(0), unknown(2), 1000, 0.01),
    ],
  });

  it('has the published points, sigma, standard deviations and residuals', () => {
    [-0.0096, -0.0226, 999.993, 0.0174].forEach((want, i) => {
      expectNear(result.estimates[i], want, PRINTED);
    });
    expectNear(0.01 * (result.sigma0 ?? 0), 6.882e-3, 0.51e-6);
    for (const at of [0, 2]) {
      const { xx, yy } = result.covarianceBlock(at);
      expectNear((result.sigma0 ?? 0) * Math.sqrt(xx), 0.00901, 0.51e-5);
      expectNear((result.sigma0 ?? 0) * Math.sqrt(yy), 0.00637, 0.51e-5);
    }
    [0.0026, -0.00368, -0.00368, 0.0026, 0.0026].forEach((want, i) => {
      expectNear(result.residuals[i], want, 0.51e-5);
    });
  });

  it('has the computed covariance a priori and ellipses', () => {
    const { xx, xy, yy } = result.covarianceBlock(0);
    expectNear(xx, 1.71434e-4, 0.51e-10);
    expectNear(xy, -5.714667e-5, 0.51e-10);
    expectNear(yy, 8.571593e-5, 0.51e-10);
    for (const [at, degrees] of [
      [0, 153.435],
      [2, 26.565],
    ] as const) {
      const ellipse = errorEllipse(result.covarianceBlock(at));
      expectNear((result.sigma0 ?? 0) * ellipse.semiMajor, 0.009733, 0.51e-6);
      expectNear((result.sigma0 ?? 0) * ellipse.semiMinor, 0.005203, 0.51e-6);
      expectNear(((ellipse.direction * 180) / Math.PI + 180) % 180, degrees, 0.51e-3);
    }
  });
});

describe('one point by five distances that nearly line up (Benning 2011, example 8-8)', () => {
  const p = unknown(0);
  const result = solved({
    estimates: [2000, 2000],
    observations: [
      tape('1', fixed(3000, 2000), p, 1000, 0.02),
      tape('2', fixed(1000, 2000), p, 1000, 0.02),
      tape('3', fixed(3000, 2100), p, 1005, 0.02),
      tape('4', fixed(1000, 2100), p, 1005, 0.02),
      tape('5', fixed(2000, 1000), p, 1000, 0.02),
    ],
  });

  it('has the published point and standard deviations, and the computed sigma and ellipse', () => {
    expectNear(result.estimates[0], 2000, PRINTED);
    expectNear(result.estimates[1], 1999.9976, PRINTED);
    const { xx, yy } = result.covarianceBlock(0);
    const sigma0 = result.sigma0 ?? 0;
    expectNear(sigma0, 0.502821, 0.51e-6);
    expectNear(sigma0 * Math.sqrt(xx), 0.00504, 0.51e-5);
    expectNear(sigma0 * Math.sqrt(yy), 0.00996, 0.51e-5);
    const ellipse = errorEllipse(result.covarianceBlock(0));
    expectNear(sigma0 * ellipse.semiMajor, 0.009958, 0.51e-6);
    expectNear(Math.abs(ellipse.direction), Math.PI / 2, 1e-3);
  });
});
