// Sources: levelling loops worked by hand (any survey text: one misclosure cannot be laid on one of its measurements); Krumm,
// Geodetic Network Adjustment Examples, Rev 3.5, after Strang & Borre 1997, example 10.1; correlations by ml-matrix 6.15.1;
// leaving each observation out by brute force; Förstner's separability (from memory) borne out by repeated noise.
import type { Observation, Solved } from '@footmark/adjust';
import { describe, expect, it } from 'vitest';
import { normal, seededRandom } from '../random/seeded';
import { denseReference } from './denseReference';
import { seededNetwork, YARDS } from './seededNetwork';
import { fixed, solved, tape, unknown } from './solved';

/** The value of a sum of unknowns, each with its coefficient. */
function sum(id: string, terms: Readonly<Record<number, number>>, value: number, sigma: number): Observation {
  const entries = Object.entries(terms).map(([index, coefficient]) => [Number(index), coefficient] as const);
  return {
    kind: 'custom',
    id,
    value,
    sigma,
    evaluate: (x) => entries.reduce((total, [i, coefficient]) => total + coefficient * (x[i] ?? 0), 0),
    gradient: (_, out) => {
      for (const [i, coefficient] of entries) out.add(i, coefficient);
    },
  };
}

const groupsOf = (result: Solved, alpha?: number) =>
  result.suspects(alpha).map((group) => group.map(({ id }) => id));

/** Sum of squares that is left when each suspect in turn is put right by its blunder. */
function leftAfterRepair(observations: readonly Observation[], estimates: number[]): number[] {
  const [group] = solved({ estimates, observations: [...observations] }).suspects();
  return (group ?? []).map(({ index, blunder }) => {
    const repaired = observations.map((o, i) => (i === index ? { ...o, value: o.value - blunder } : o));
    return solved({ estimates, observations: repaired }).vTPv;
  });
}

describe.each([
  ['cholesky', {}],
  ['qr', { choleskyPivot: 2 }],
] as const)('two measurements that only check one another, by %s', (_, options) => {
  const others = [10, 10.1, 9.9, 10.05].map((value, i) => sum(`other ${i}`, { 1: 1 }, value, 0.1));
  const pair = [sum('first', { 0: 1 }, 10, 0.1), sum('second', { 0: 1 }, 12, 0.3)];

  it('are suspect together, in the order in which they stand, with blunders that each explain the gap of 2', () => {
    const result = solved({ estimates: [0, 0], observations: [...others, ...pair] }, options);
    expect(groupsOf(result)).toEqual([['first', 'second']]);
    expect(result.suspects()[0]?.map(({ blunder }) => blunder)).toEqual([
      expect.closeTo(-2, 9),
      expect.closeTo(2, 9),
    ]);
    const swapped = solved({ estimates: [0, 0], observations: [...pair].reverse().concat(others) }, options);
    expect(groupsOf(swapped)).toEqual([['second', 'first']]);
  });

  it('stay out of it when another is off, which is named alone', () => {
    const observations = [
      ...others.map((o, i) => (i === 2 ? { ...o, value: 8 } : o)),
      ...pair.map((o) => ({ ...o, value: 10 })),
    ];
    const result = solved({ estimates: [0, 0], observations }, options);
    expect(groupsOf(result)[0]).toEqual(['other 2']);
    expect(groupsOf(result).flat()).not.toContain('first');
  });

  it('are still tied where the residual is so large that rounding counts', () => {
    const apart = [sum('first', { 0: 1 }, 0, 0.1), sum('second', { 0: 1 }, 1e9 + 1 / 3, 0.3)];
    const result = solved({ estimates: [0, 0], observations: [...others, ...apart] }, options);
    expect(groupsOf(result)).toEqual([['first', 'second']]);
  });
});

it('keeps two conditions apart that are off by the same: equal residuals alone are no tie', () => {
  const observations = [0, 1].flatMap((i) => [
    sum(`a${i}`, { [i]: 1 }, 10, 0.1),
    sum(`b${i}`, { [i]: 1 }, 11, 0.1),
  ]);
  const result = solved({ estimates: [0, 0], observations });
  expect(groupsOf(result)).toHaveLength(2);
  expect(groupsOf(result)).toEqual(
    expect.arrayContaining([
      ['a0', 'b0'],
      ['a1', 'b1'],
    ]),
  );
});

describe('levelling from a fixed height 0 over B, C and D', () => {
  // Height differences in metres, true heights 1, 3, 2. Two loops share CA.
  const AB = sum('AB', { 0: 1 }, 1, 0.002);
  const BC = sum('BC', { 0: -1, 1: 1 }, 2, 0.003);
  const CA = sum('CA', { 1: -1 }, -3, 0.001);
  const CD = sum('CD', { 1: -1, 2: 1 }, -1, 0.002);
  const DA = sum('DA', { 2: -1 }, -2, 0.002);
  const off = (o: Observation, by: number): Observation => ({ ...o, value: o.value + by });

  it('lays the misclosure of one loop on all its sides, each to the full', () => {
    const loop = [off(AB, 0.05), BC, CA];
    const result = solved({ estimates: [0, 0], observations: loop });
    expect(groupsOf(result)).toEqual([['AB', 'BC', 'CA']]);
    for (const { blunder } of result.suspects()[0] ?? []) expect(blunder).toBeCloseTo(0.05, 9);
    for (const left of leftAfterRepair(loop, [0, 0])) expect(left).toBeLessThan(1e-15);
  });

  it('tells a side of one loop from those of the other, but not from its neighbour in the loop', () => {
    const result = solved({ estimates: [0, 0, 0], observations: [off(AB, 0.05), BC, CA, CD, DA] });
    expect(groupsOf(result)[0]).toEqual(['AB', 'BC']);
    expect(groupsOf(result)).not.toContainEqual(expect.arrayContaining(['AB', 'CA']));
  });

  it('tells the side that both loops share from all others', () => {
    const result = solved({ estimates: [0, 0, 0], observations: [AB, BC, off(CA, 0.05), CD, DA] });
    expect(groupsOf(result)[0]).toEqual(['CA']);
  });
});

it('ties the three tapes of the published example: one degree of freedom never tells which', () => {
  const p = unknown(0);
  const tapes = [
    tape('d1', fixed(170.71, 270.71), p, 100.01, 0.01),
    tape('d2', fixed(100, 100), p, 100.02, 0.01),
    tape('d3', fixed(241.42, 100), p, 100.03, 0.01),
  ];
  const result = solved({ estimates: [170.71, 170.71], observations: tapes });
  expect(groupsOf(result)).toEqual([['d1', 'd2', 'd3']]);
  // Not linear: what is left is small against 10.9, not nothing.
  for (const left of leftAfterRepair(tapes, [170.71, 170.71])) expect(left).toBeLessThan(1e-4);
});

/** Two measurements of one value and a third so weak that it hardly tells them apart. */
const nearPair = (values: readonly number[], weakSigma: number) =>
  solved({
    estimates: [0],
    observations: values.map((value, i) => sum(`m${i}`, { 0: 1 }, value, i === 2 ? weakSigma : 1)),
  });

it('takes in a tied one that is just under the limit', () => {
  const sizes = [...nearPair([1, 0, -1], 20).standardizedResiduals].map(Math.abs);
  // 3.2905: 0.1 % in both tails of the normal law (tables). Put between the two, which grow with the values.
  const scale = 3.2905 / (((sizes[0] ?? 0) + (sizes[1] ?? 0)) / 2);
  const result = nearPair([scale, 0, -scale], 20);
  expect(Math.abs(result.standardizedResiduals[0] ?? 0)).toBeGreaterThan(3.291);
  expect(Math.abs(result.standardizedResiduals[1] ?? 0)).toBeLessThan(3.29);
  expect(groupsOf(result)).toEqual([['m0', 'm1']]);
});

it('tells near ones apart when the evidence does', () => {
  // Correlation −1/(1 + 1/20²) of the pair; a gap of 4000 leaves 200 sigma in the weak third when the wrong one is left out.
  const result = nearPair([4000, 0, 0], 20);
  expect(groupsOf(result)[0]).toEqual(['m0']);
});

it('says that a correlation of 0.99 leaves a coin to toss: a blunder of 4 sigma lands on the other in 39 of 100', () => {
  const draws = 4000;
  const random = seededRandom(17);
  const weak = Math.sqrt(99); // the pair's correlation is −1/(1 + 1/weak²) = −0.99
  const redundancy = 1 - 1 / (2 + 1 / 99);
  const blunder = 4 / Math.sqrt(redundancy);
  let other = 0;
  let together = 0;
  for (let k = 0; k < draws; k++) {
    const noise = () => normal(random);
    const result = nearPair([blunder + noise(), noise(), weak * noise()], weak * (1 + 1e-9));
    const [a, b] = [...result.standardizedResiduals].map(Math.abs);
    if ((b ?? 0) > (a ?? 0)) other++;
    const [first] = result.suspects(0.05);
    if (first?.length === 2 && first[0].id === 'm0' && first[1]?.id === 'm1') together++;
  }
  // So many draws give a share of 0.39 to √(0.39 · 0.61 / 4000) = 0.0077; the limit is four times that.
  expect(Math.abs(other / draws - 0.389)).toBeLessThan(0.031);
  expect(together / draws).toBeGreaterThan(0.9);
});

it('ranks by what leaving out would gain: vᵀPv falls by the square of the standardised residual, by brute force', () => {
  const random = seededRandom(3);
  const observations = Array.from({ length: 24 }, (_, k) => {
    const terms = Object.fromEntries([0, 1, 2, 3, 4].map((i) => [i, normal(random)]));
    const sigma = 0.1 + random();
    return sum(`o${k}`, terms, sigma * normal(random) + (k === 7 ? 8 : 0), sigma);
  });
  const estimates = [0, 0, 0, 0, 0];
  const result = solved({ estimates, observations });
  const gains = observations.map(
    (_, k) => result.vTPv - solved({ estimates, observations: observations.filter((_, i) => i !== k) }).vTPv,
  );
  gains.forEach((gain, k) => {
    expect(Math.abs(gain - (result.standardizedResiduals[k] ?? Number.NaN) ** 2)).toBeLessThan(
      1e-9 * result.vTPv,
    );
  });
  expect(result.suspects()[0]?.[0].index).toBe(gains.indexOf(Math.max(...gains)));
});

describe.each(YARDS)('seeded yard $seed: $points points, $count observations', ({ seed, points, count }) => {
  const { estimates, observations } = seededNetwork(seed, points, count);
  const { design, covariance, redundancy } = denseReference(estimates, observations);

  it('has no two residuals that are correlated through and through, and no tie wherever the blunder is', () => {
    const hat = design.mmul(covariance).mmul(design.transpose());
    const checked = observations.map((_, i) => i).filter((i) => (redundancy[i] ?? 0) > 1e-6);
    for (const i of checked) {
      for (const j of checked.filter((other) => other < i)) {
        const correlation = -hat.get(i, j) / Math.sqrt((redundancy[i] ?? 0) * (redundancy[j] ?? 0));
        expect(Math.abs(correlation)).toBeLessThan(0.99);
      }
    }
    for (const index of checked.filter((i) => i % 3 === 0)) {
      const spoilt = observations.map((o, i) => (i === index ? { ...o, value: o.value + 15 * o.sigma } : o));
      for (const group of solved({ estimates, observations: spoilt }).suspects()) {
        expect(group).toHaveLength(1);
      }
    }
  });
});
