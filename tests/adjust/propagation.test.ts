// Sources: normal equations by ml-matrix 6.15.1 (`denseReference`); the mean and the straight line as worked by hand.
import type { Gradient, Observation } from '@footmark/adjust';
import { Matrix } from 'ml-matrix';
import { describe, expect, it } from 'vitest';
import { normal, seededRandom } from '../random/seeded';
import { denseReference } from './denseReference';
import { seededNetwork, YARDS } from './seededNetwork';
import { solved } from './solved';

/** Agreement asked for, relative to the standard deviations of the two functions, or to the variance. */
const AGREEMENT = 1e-9;

/** Functions of one to six of the unknowns with coefficients of every size from 0.01 to 100. */
function seededFunctions(seed: number, unknowns: number, count: number): Gradient[] {
  const random = seededRandom(seed);
  return Array.from({ length: count }, () =>
    Array.from({ length: 1 + Math.floor(6 * random()) }, () => ({
      unknown: Math.floor(unknowns * random()),
      derivative: normal(random) * 10 ** (4 * random() - 2),
    })),
  );
}

function dense(gradient: Gradient, unknowns: number): Matrix {
  const column = Matrix.zeros(unknowns, 1);
  for (const { unknown, derivative } of gradient) {
    column.set(unknown, 0, column.get(unknown, 0) + derivative);
  }
  return column;
}

describe.each(YARDS)('functions of seeded yard $seed: $points points, $count observations', (yard) => {
  const { estimates, observations } = seededNetwork(yard.seed, yard.points, yard.count);
  const { covariance, design } = denseReference(estimates, observations);
  const functions = seededFunctions(100 + yard.seed, estimates.length, 8);
  const columns = functions.map((gradient) => dense(gradient, estimates.length));
  const wanted = columns.map((a) => columns.map((b) => a.transpose().mmul(covariance).mmul(b).get(0, 0)));

  describe.each([
    ['cholesky', {}],
    ['qr', { choleskyPivot: 2 }],
  ] as const)('by %s', (solver, options) => {
    const result = solved({ estimates, observations }, options);

    it('have the covariance of the normal equations', () => {
      expect(result.solver).toBe(solver);
      const got = result.propagate(functions);
      expect(got.map((row) => row.length)).toEqual(functions.map(() => functions.length));
      wanted.forEach((row, i) => {
        row.forEach((want, j) => {
          const scale = Math.sqrt((row[i] ?? Number.NaN) * (wanted[j]?.[j] ?? Number.NaN));
          expect(Math.abs((got[i]?.[j] ?? Number.NaN) - want) / scale).toBeLessThan(AGREEMENT);
          expect(got[j]?.[i]).toBe(got[i]?.[j]);
        });
      });
    });

    it('have the shares of the normal equations, which sum to the variance', () => {
      functions.forEach((gradient, i) => {
        const variance = wanted[i]?.[i] ?? Number.NaN;
        const column = columns[i] as Matrix; // one per function
        const effects = design.mmul(covariance).mmul(column).to1DArray();
        const shares = result.shares(gradient);
        expect(shares).toHaveLength(observations.length);
        effects.forEach((effect, k) => {
          expect(Math.abs((shares[k] ?? Number.NaN) - effect ** 2) / variance).toBeLessThan(AGREEMENT);
        });
        const sum = shares.reduce((total, share) => total + share, 0);
        expect(Math.abs(sum / variance - 1)).toBeLessThan(AGREEMENT);
      });
    });
  });
});

/** Heights at 0, 1, 2, 3 with sigma 1; unknowns intercept and slope. */
const line = solved({
  estimates: [0, 0],
  observations: [1, 3, 4, 4].map(
    (value, x): Observation => ({
      kind: 'custom',
      id: `at ${x}`,
      value,
      sigma: 1,
      evaluate: (p) => (p[0] ?? 0) + x * (p[1] ?? 0),
      gradient: (_, out) => {
        out.add(0, 1);
        out.add(1, x);
      },
    }),
  ),
});
const heightAt = (x: number): Gradient => [
  { unknown: 0, derivative: 1 },
  { unknown: 1, derivative: x },
];

it('gives heights on a line their covariance 1/n + (x − x̄)(x′ − x̄)/Sxx, here x̄ = 1.5, Sxx = 5 (any text on regression)', () => {
  const got = line.propagate([heightAt(2), heightAt(7)]);
  expect(got[0]?.[0]).toBeCloseTo(0.25 + 0.5 ** 2 / 5, 13);
  expect(got[0]?.[1]).toBeCloseTo(0.25 + (0.5 * 5.5) / 5, 13);
  expect(got[1]?.[1]).toBeCloseTo(0.25 + 5.5 ** 2 / 5, 13);
});

it('shares a height on a line by its weights: 1/n + (x − x̄)(xᵢ − x̄)/Sxx each, squared', () => {
  [0, 1, 2, 3].forEach((x, i) => {
    expect(line.shares(heightAt(7))[i]).toBeCloseTo((0.25 + (5.5 * (x - 1.5)) / 5) ** 2, 13);
  });
});

it('shares a weighted mean by its weights: p²σ²/(Σp)² each', () => {
  const sigmas = [0.5, 1, 0.1];
  const weights = sigmas.map((sigma) => 1 / sigma ** 2);
  const total = weights.reduce((sum, p) => sum + p, 0);
  const mean = solved({
    estimates: [0],
    observations: sigmas.map(
      (sigma, i): Observation => ({ kind: 'coordinate', id: `m${i}`, unknown: 0, value: 10, sigma }),
    ),
  });
  const shares = mean.shares([{ unknown: 0, derivative: 1 }]);
  weights.forEach((p, i) => {
    expect(shares[i]).toBeCloseTo(p / total ** 2, 14);
  });
});

it('takes derivatives by one unknown together, and those left out as 0', () => {
  const twice = [
    { unknown: 1, derivative: 2 },
    { unknown: 1, derivative: 0.5 },
  ];
  expect(line.propagate([twice])[0]?.[0]).toBeCloseTo(2.5 ** 2 * line.covarianceOf(1, 1), 13);
  expect(line.propagate([[]])[0]?.[0]).toBe(0);
  expect(line.propagate([])).toEqual([]);
});

it.each([
  [2, 1, 'unknown 2'],
  [-1, 1, 'unknown -1'],
  [0.5, 1, 'unknown 0.5'],
  [0, Number.NaN, 'not finite'],
])('refuses unknown %d with derivative %d', (unknown, derivative, message) => {
  const gradient = [{ unknown, derivative }];
  for (const ask of [() => line.propagate([gradient]), () => line.shares(gradient)]) {
    expect(ask).toThrow(RangeError);
    expect(ask).toThrow(message);
  }
});
