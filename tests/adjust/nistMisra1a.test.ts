// Source: NIST Statistical Reference Datasets, non-linear regression, Misra1a (public domain): data, both starts and certified
// values. Lower level of difficulty; the second start is the nearer one.
import type { Observation } from '@footmark/adjust';
import { describe, expect, it } from 'vitest';
import { solved } from './solved';

const DATA = [
  [77.6, 10.07],
  [114.9, 14.73],
  [141.1, 17.94],
  [190.8, 23.93],
  [239.9, 29.61],
  [289.0, 35.18],
  [332.8, 40.02],
  [378.4, 44.82],
  [434.8, 50.76],
  [477.3, 55.05],
  [536.8, 61.01],
  [593.1, 66.4],
  [689.1, 75.47],
  [760.0, 81.78],
] as const;

/** y = b1 (1 − exp(−b2 x)) */
const observations = DATA.map(
  ([x, y]): Observation => ({
    kind: 'custom',
    id: `x ${x}`,
    value: y,
    sigma: 1,
    evaluate: (b) => (b[0] ?? 0) * -Math.expm1(-(b[1] ?? 0) * x),
    gradient: (b, out) => {
      out.add(0, -Math.expm1(-(b[1] ?? 0) * x));
      out.add(1, (b[0] ?? 0) * x * Math.exp(-(b[1] ?? 0) * x));
    },
  }),
);

const relative = (got: number | undefined, want: number) => Math.abs((got ?? Number.NaN) / want - 1);

describe.each([
  ['far', [500, 1e-4]],
  ['near', [250, 5e-4]],
] as const)('Misra1a from the %s start', (_, estimates) => {
  it.each(['cholesky', 'qr'] as const)('has the certified values by %s', (solver) => {
    const result = solved({ estimates, observations }, solver === 'qr' ? { choleskyPivot: 2 } : {});
    expect(result.solver).toBe(solver);
    expect(result.status).toBe('converged');
    expect(result.dof).toBe(12);
    expect(relative(result.estimates[0], 2.3894212918e2)).toBeLessThan(1e-9);
    expect(relative(result.estimates[1], 5.5015643181e-4)).toBeLessThan(1e-9);
    expect(relative(result.vTPv, 1.2455138894e-1)).toBeLessThan(1e-9);
    const sigma0 = result.sigma0 ?? 0;
    expect(relative(sigma0, 1.018787633e-1)).toBeLessThan(1e-9);
    expect(relative(sigma0 * Math.sqrt(result.covarianceOf(0, 0)), 2.7070075241)).toBeLessThan(1e-7);
    expect(relative(sigma0 * Math.sqrt(result.covarianceOf(1, 1)), 7.2668688436e-6)).toBeLessThan(1e-7);
  });
});
