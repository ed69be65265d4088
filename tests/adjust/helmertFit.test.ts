// Source: worked plane similarity fit of the geofindkey README (Geo-Linux-Calculations): points, and the result, solved
// again by an independent program. Linear, so it must arrive in one step from anywhere.
import type { Observation } from '@footmark/adjust';
import { expect, it } from 'vitest';
import { solved } from './solved';

const PAIRS = [
  [1334.71, 285.94, 83477.64, 47377.6],
  [563.67, -5197.34, 82557.14, 41916.51],
  [4444.27, 1153.79, 86610.19, 48160.39],
  [-252.07, 2881.9, 81962.05, 50016.34],
] as const;

/** Unknowns a, b, c, d of X = a x − b y + c, Y = b x + a y + d. */
const observations = PAIRS.flatMap(([x, y, X, Y], i): Observation[] => [
  linear(`X${i + 1}`, X, [x, -y, 1, 0]),
  linear(`Y${i + 1}`, Y, [y, x, 0, 1]),
]);

function linear(id: string, value: number, row: readonly number[]): Observation {
  return {
    kind: 'custom',
    id,
    value,
    sigma: 1,
    evaluate: (p) => row.reduce((sum, coefficient, k) => sum + coefficient * (p[k] ?? 0), 0),
    gradient: (_, out) => {
      row.forEach((coefficient, k) => {
        out.add(k, coefficient);
      });
    },
  };
}

it('fits the transformation and its residuals', () => {
  const result = solved({ estimates: [1, 0, 0, 0], observations });
  expect(result.status).toBe('converged');
  expect(result.estimates[0]).toBeCloseTo(0.999787994, 9);
  expect(result.estimates[1]).toBeCloseTo(-0.027289778, 9);
  expect(result.estimates[2]).toBeCloseTo(82135.4073, 4);
  expect(result.estimates[3]).toBeCloseTo(47128.1437, 4);
  [-0.0024, -0.0008, -0.0165, 0.0132, 0.0318, 0.016, -0.0129, -0.0283].forEach((want, i) => {
    expect(Math.abs((result.residuals[i] ?? Number.NaN) - want)).toBeLessThan(0.6e-4);
  });
  expect(result.sigma0).toBeCloseTo(0.025893, 6);
});
