// Source: a second implementation (`denseReference`) on ml-matrix 6.15.1, which shares no code with the package.
import { describe, expect, it } from 'vitest';
import { normal, seededRandom } from '../random/seeded';
import { denseReference } from './denseReference';
import { seededNetwork, YARDS } from './seededNetwork';
import { solved } from './solved';

/** Agreement asked for, relative to the size of the yard, of the covariance, of 1. */
const AGREEMENT = 1e-9;

describe.each(YARDS)('seeded yard $seed: $points points, $count observations', ({ seed, points, count }) => {
  const { estimates, observations } = seededNetwork(seed, points, count);
  const reference = denseReference(estimates, observations);

  it.each(['cholesky', 'qr'] as const)('agrees with the dense reference by %s', (solver) => {
    const result = solved({ estimates, observations }, solver === 'qr' ? { choleskyPivot: 2 } : {});
    expect(result.status).toBe('converged');
    expect(result.solver).toBe(solver);
    reference.estimates.forEach((want, i) => {
      expect(Math.abs((result.estimates[i] ?? Number.NaN) - want)).toBeLessThan(AGREEMENT * 10);
    });
    expect(Math.abs(result.vTPv / reference.vTPv - 1)).toBeLessThan(AGREEMENT);
    let largest = 0;
    for (let i = 0; i < 2 * points; i++) {
      for (let j = 0; j < 2 * points; j++) {
        const scale = Math.sqrt(reference.covariance.get(i, i) * reference.covariance.get(j, j));
        const gap = Math.abs(result.covarianceOf(i, j) - reference.covariance.get(i, j)) / scale;
        largest = Math.max(largest, gap);
      }
    }
    expect(largest).toBeLessThan(AGREEMENT);
    reference.redundancy.forEach((want, i) => {
      expect(Math.abs((result.redundancyNumbers[i] ?? Number.NaN) - want)).toBeLessThan(AGREEMENT);
    });
    reference.weightedResiduals.forEach((v, i) => {
      const weighted = (result.residuals[i] ?? Number.NaN) / (observations[i]?.sigma ?? Number.NaN);
      expect(Math.abs(weighted - v)).toBeLessThan(AGREEMENT * Math.sqrt(reference.vTPv));
    });
  });

  it('has redundancy numbers that sum to the degrees of freedom', () => {
    const result = solved({ estimates, observations });
    expect(result.redundancyNumbers.reduce((sum, r) => sum + r, 0)).toBeCloseTo(result.dof, 9);
  });
});

it('has a covariance that repeated noise bears out', () => {
  // 400 draws of one yard's noise: the scatter of a coordinate against its variance. So many draws give a standard deviation to
  // 1/√800 = 3.5 %; the limit is four times that.
  const draws = 400;
  const random = seededRandom(78);
  const { truth, observations } = seededNetwork(77, 6, 40);
  const exact = solved({ estimates: truth, observations });
  let squares = 0;
  for (let k = 0; k < draws; k++) {
    const noisy = observations.map((o) => ({ ...o, value: o.value + o.sigma * normal(random) }));
    const { estimates } = solved({ estimates: truth, observations: noisy });
    squares += ((estimates[4] ?? Number.NaN) - (exact.estimates[4] ?? Number.NaN)) ** 2;
  }
  expect(Math.abs(Math.sqrt(squares / draws / exact.covarianceOf(4, 4)) - 1)).toBeLessThan(0.14);
});
