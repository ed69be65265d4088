import { chiSquareQuantile } from '@footmark/adjust';
import { derive, type Feature, newSite, type Path, type Run, type Site } from '@footmark/site';
import { describe, expect, it } from 'vitest';

// How good the computed places are, by the formulas of FGDC-STD-007.3-1998 (NSSDA), appendix 3-A, from memory. Its own worked
// numbers were not found; the check values are computed from the formulas with exact chi-square constants.

const units = { length: 'm', diameter: 'mm', direction: 'azimuth' } as const;
const START_M = 5;
const STEP_M = 0.5;

/** A pipe due east with a reading every half metre, each of them located so far off its computed place. */
function accuracyOf(offs: readonly (readonly [dx: number, dy: number])[]) {
  const empty = newSite({ id: 's', name: '', createdAt: '2026-01-02T03:04:05Z', units });
  const at = (x: number, y: number) => ({ by: 'coordinates' as const, x, y });
  const station = (i: number) => START_M + STEP_M * i;
  const entry: Feature = {
    id: 'head',
    kind: 'cleanout',
    name: '',
    vertices: [{ id: 'a', spot: at(0, 0) }],
    fields: {},
  };
  const path: Path = {
    id: 'main',
    name: '',
    state: 'existing',
    vertices: [
      { id: 'a', spot: at(0, 0) },
      { id: 'b', spot: at(60, 0) },
    ],
    bendRadius: 0,
    stretches: [{ from: 0, material: 'clay', diameter: 0.1, slope: 0 }],
  };
  const run: Run = {
    id: 'run',
    letter: 'A',
    name: '',
    visit: null,
    entry: 'head',
    path: 'main',
    direction: 'with-flow',
    branches: [],
    zero: { at: 'in-pipe', counter: 0 },
    scale: { by: 'said', factor: 1 },
    resolution: 0.03,
    head: { length: 0, zeroed: 'lens' },
    note: '',
    readings: offs.map((_, i) => ({
      id: `r${i}`,
      number: i + 1,
      counter: station(i),
      seen: 'crack' as const,
      passed: true,
      note: '',
    })),
  };
  const locates = offs.map(
    ([dx, dy], i): Feature => ({
      id: `l${i}`,
      kind: 'locate',
      name: '',
      vertices: [{ id: 'a', spot: at(station(i) + dx, dy) }],
      fields: { reading: { run: 'run', reading: `r${i}` } },
    }),
  );
  const site: Site = { ...empty, features: [entry, ...locates], paths: [path], runs: [run] };
  const { accuracy } = derive(site);
  if (accuracy === null) throw new Error('no accuracy');
  return accuracy;
}

/** Errors of these sizes on either side: their root mean squares are the sizes themselves. */
const both = (x: number, y: number) =>
  [
    [x, y],
    [-x, -y],
  ] as const;

describe('accuracy by locates', () => {
  it('has the root mean square of both axes and of the distances (A1)', () => {
    // 3-4-5: dx 0.3 and 0, dy 0 and 0.4 over two points
    const found = accuracyOf([
      [0.3, 0],
      [0, 0.4],
    ]);
    expect(found.count).toBe(2);
    expect(found.rmseX).toBeCloseTo(Math.sqrt(0.09 / 2), 9);
    expect(found.rmseY).toBeCloseTo(Math.sqrt(0.16 / 2), 9);
    expect(found.rmse).toBeCloseTo(Math.sqrt(0.25 / 2), 9);
  });

  it('with equal axes is 1.7308·RMSE_r = 2.4477·RMSE_x (A2)', () => {
    const each = 0.5 / Math.SQRT2;
    const found = accuracyOf(both(each, each));
    expect(found.rmse).toBeCloseTo(0.5, 9);
    expect(found).toMatchObject({ rule: 'equal', ratio: expect.closeTo(1, 9) });
    expect(found.accuracy).toBeCloseTo(0.8654, 4);
    expect(found.accuracy).toBeCloseTo(1.730818382 * 0.5, 8);
    expect(found.accuracy).toBeCloseTo(Math.sqrt(chiSquareQuantile(0.95, 2)) * each, 9);
  });

  it.each([
    [0.3, 0.4, 0.8567],
    [0.4, 0.3, 0.8567],
    [0.1, 0.15, 0.30596],
  ])('with axes of %s and %s is 2.4477 times their mean, %s (A3)', (x, y, expected) => {
    const found = accuracyOf(both(x, y));
    expect(found.rule).toBe('mean');
    expect(found.accuracy).toBeCloseTo(expected, 4);
  });

  it('with axes too unequal for that takes the larger one and says so', () => {
    const found = accuracyOf(both(0.1, 0.2));
    expect(found).toMatchObject({ rule: 'larger', ratio: expect.closeTo(0.5, 9) });
    expect(found.accuracy).toBeCloseTo(2.447746831 * 0.2, 8);
    expect(accuracyOf(both(0.12, 0.2001)).rule).toBe('larger');
    expect(accuracyOf(both(0.1201, 0.2)).rule).toBe('mean');
  });

  it('promises no less than 95 % where the standard has no formula, as its mean would', () => {
    for (const ratio of [0.02, 0.1, 0.2, 0.3, 0.4, 0.5, 0.59]) {
      const found = accuracyOf(both(ratio, 1));
      expect(found.rule).toBe('larger');
      expect(chanceWithin(found.accuracy, ratio, 1)).toBeGreaterThan(0.95);
    }
    expect(chanceWithin((2.447746831 * 1.3) / 2, 0.3, 1)).toBeLessThan(0.9);
  });

  it('is nothing when nothing is off', () => {
    const found = accuracyOf([[0, 0]]);
    expect(found).toMatchObject({ count: 1, ratio: 1, rule: 'equal' });
    expect(found.accuracy).toBeLessThan(1e-12);
  });

  it('says when there are fewer than the 20 check points that the standard asks for (A4)', () => {
    expect(accuracyOf(Array.from({ length: 19 }, () => [0.1, 0.1] as const)).enough).toBe(false);
    expect(accuracyOf(Array.from({ length: 20 }, () => [0.1, 0.1] as const)).enough).toBe(true);
  });
});

/** Share of a normal error with these standard deviations within a radius: its density summed over rings and directions. */
function chanceWithin(radius: number, sigmaX: number, sigmaY: number): number {
  // over the radius in closed form: ∫ r·e^(−r²a/2) dr = (1 − e^(−R²a/2)) / a with a = cos²θ/σx² + sin²θ/σy²
  const DIRECTIONS = 20_000;
  let sum = 0;
  for (let i = 0; i < DIRECTIONS; i++) {
    const theta = (2 * Math.PI * (i + 0.5)) / DIRECTIONS;
    const a = (Math.cos(theta) / sigmaX) ** 2 + (Math.sin(theta) / sigmaY) ** 2;
    sum += (1 - Math.exp((-radius * radius * a) / 2)) / a;
  }
  return sum / (DIRECTIONS * sigmaX * sigmaY);
}
