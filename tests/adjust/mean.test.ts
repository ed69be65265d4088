// Source: the mean of n equal measurements, worked by hand: variance σ²/n, r = 1 − 1/n, w = v / (σ √r), a blunder shows in full
// against the mean of the others.
import type { Observation } from '@footmark/adjust';
import { expect, it } from 'vitest';
import { solved } from './solved';

const SIGMA = 0.5;
const mean = (values: readonly number[]) =>
  solved({
    estimates: [0],
    observations: values.map(
      (value, i): Observation => ({ kind: 'coordinate', id: `m${i}`, unknown: 0, value, sigma: SIGMA }),
    ),
  });

it('takes the mean of four, with its variance, redundancies and standardised residuals', () => {
  const result = mean([10, 10.5, 9.5, 12]);
  expect(result.estimates[0]).toBeCloseTo(10.5, 12);
  expect(result.covarianceOf(0, 0)).toBeCloseTo(SIGMA ** 2 / 4, 14);
  expect([...result.residuals].map((v) => Number(v.toFixed(12)))).toEqual([0.5, 0, 1, -1.5]);
  for (const r of result.redundancyNumbers) expect(r).toBeCloseTo(0.75, 14);
  expect(result.standardizedResiduals[3]).toBeCloseTo(-1.5 / (SIGMA * Math.sqrt(0.75)), 12);
  expect(result.vTPv).toBeCloseTo(3.5 / SIGMA ** 2, 12);
  expect(result.sigma0).toBeCloseTo(Math.sqrt(14 / 3), 12);
});

it('names the one that stands off, with its distance from the mean of the others', () => {
  const suspects = mean([10, 10.5, 9.5, 12]).suspects();
  expect(suspects).toHaveLength(1);
  expect(suspects[0]).toHaveLength(1);
  expect(suspects[0]?.[0]).toMatchObject({ id: 'm3', index: 3 });
  expect(suspects[0]?.[0].standardizedResidual).toBeCloseTo(-1.5 / (SIGMA * Math.sqrt(0.75)), 12);
  expect(suspects[0]?.[0].blunder).toBeCloseTo(2, 12);
});

it('names it at the levels at which it is significant: √12 in both tails is 0.000532 (normal law, erfc(√6))', () => {
  const result = mean([10, 10.5, 9.5, 12]);
  expect(result.suspects(0.000533)).toHaveLength(1);
  expect(result.suspects(0.000531)).toEqual([]);
  expect(() => result.suspects(0)).toThrow(RangeError);
});

it('holds the sum of squares to χ² with 3 degrees of freedom: 0.216 and 9.348 at 2.5 % and 97.5 % (any statistics text)', () => {
  const { globalTest } = mean([10, 10.5, 9.5, 12]);
  expect(globalTest).toMatchObject({ alpha: 0.05, passed: false });
  expect(globalTest?.lower).toBeCloseTo(0.216, 3);
  expect(globalTest?.upper).toBeCloseTo(9.348, 3);
});

it('passes a fair spread, and fails one that is too good for its sigmas', () => {
  expect(mean([10, 10.5, 9.5, 10.2]).globalTest?.passed).toBe(true);
  expect(mean([10, 10.001, 9.999, 10]).globalTest?.passed).toBe(false);
});

it('lets one measurement without a check have no standardised residual and be no suspect', () => {
  const result = mean([10]);
  expect(result.standardizedResiduals[0]).toBe(0);
  expect(result.status).toBe('no-redundancy');
  expect(result.suspects(0.999)).toEqual([]);
});
