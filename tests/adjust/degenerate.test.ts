// Sources: none published; what a solver must say of poor input, by reasoning from the geometry of each case.
import { adjust, type Observation } from '@footmark/adjust';
import { describe, expect, it } from 'vitest';
import { fixed, solved, tape, unknown } from './solved';

const p = unknown(0);

describe('no redundancy', () => {
  it('gives the two-tape point and its covariance: r 25 and 20 over a base of 30 meet at (18.75, 16.536)', () => {
    const sigma = 0.02;
    const result = solved({
      estimates: [15, 10],
      observations: [tape('a', fixed(0, 0), p, 25, sigma), tape('b', fixed(30, 0), p, 20, sigma)],
    });
    expect(result.status).toBe('no-redundancy');
    expect(result.estimates[0]).toBeCloseTo(18.75, 10);
    expect(result.estimates[1]).toBeCloseTo(Math.sqrt(625 - 18.75 ** 2), 10);
    expect(result).toMatchObject({ dof: 0, sigma0: null, globalTest: null });
    expect(result.suspects(0.999)).toEqual([]);
    // Position error of two tapes that meet at angle γ: σ √2 / sin γ (any text on intersection), sin γ = 16.536 · 30 / (25 · 20).
    const { xx, yy } = result.covarianceBlock(0);
    const sine = ((result.estimates[1] ?? 0) * 30) / 500;
    expect(Math.sqrt(xx + yy)).toBeCloseTo((sigma * Math.SQRT2) / sine, 10);
  });
});

describe('singular geometry', () => {
  it('names an unknown that no observation touches, and leaves it at its start', () => {
    const result = adjust({
      estimates: [15, 10, 7],
      observations: [tape('a', fixed(0, 0), p, 25, 0.02), tape('b', fixed(30, 0), p, 20, 0.02)],
    });
    expect(result.status).toBe('singular');
    if (result.status !== 'singular') return;
    expect(result.undetermined).toEqual([2]);
    expect(result.rank).toBe(2);
    expect(result.estimates[2]).toBe(7);
    expect(result.estimates[0]).toBeCloseTo(18.75, 6);
  });

  it('names the coordinate that offsets from one line alone leave free', () => {
    const observations: Observation[] = [0, 10, 20].map((x) => ({
      kind: 'offset',
      id: `from ${x}`,
      point: p,
      from: fixed(x, 0),
      to: fixed(x + 10, 0),
      value: 3,
      sigma: 0.01,
    }));
    const result = adjust({ estimates: [5, 2], observations });
    expect(result.status === 'singular' && result.undetermined).toEqual([0]);
    expect(result.estimates[1]).toBeCloseTo(3, 9);
    expect(result.estimates[0]).toBe(5);
  });

  it('names both coordinates when the free direction is oblique', () => {
    const observations: Observation[] = [0, 10].map((x) => ({
      kind: 'offset',
      id: `from ${x}`,
      point: p,
      from: fixed(x, x),
      to: fixed(x + 10, x + 10),
      value: 3,
      sigma: 0.01,
    }));
    const result = adjust({ estimates: [5, 2], observations });
    expect(result.status === 'singular' && result.undetermined).toEqual([0, 1]);
  });

  it('names all coordinates of a net of distances that nothing holds, and not those of one that is held', () => {
    const square = [0, 0, 10, 0, 10, 10, 0, 10];
    const sides = [
      [0, 2],
      [2, 4],
      [4, 6],
      [6, 0],
      [0, 4],
      [2, 6],
    ] as const;
    const observations = sides.map(([a, b]) =>
      tape(
        `${a}-${b}`,
        unknown(a),
        unknown(b),
        Math.hypot((square[b] ?? 0) - (square[a] ?? 0), (square[b + 1] ?? 0) - (square[a + 1] ?? 0)),
        0.01,
      ),
    );
    const held: Observation[] = [8, 9].map((i) => ({
      kind: 'coordinate',
      id: `c${i}`,
      unknown: i,
      value: 4,
      sigma: 1,
    }));
    const result = adjust({ estimates: [...square, 3, 3], observations: [...observations, ...held] });
    expect(result.status === 'singular' && result.undetermined).toEqual([0, 1, 2, 3, 4, 5, 6, 7]);
    expect(result.status === 'singular' && result.rank).toBe(7); // ten unknowns less two shifts and a turn
  });

  it('says so for no observations at all, and for fewer than unknowns', () => {
    const none = adjust({ estimates: [1, 2], observations: [] });
    expect(none.status === 'singular' && none.undetermined).toEqual([0, 1]);
    const one = adjust({ estimates: [3, 4], observations: [tape('a', fixed(0, 0), p, 5, 0.1)] });
    expect(one.status === 'singular' && one.undetermined).toEqual([0, 1]);
  });

  it('gets away from a start where the geometry is singular but the answer is not', () => {
    // At the start the point lies on a fixed one: that distance has no direction yet.
    const result = solved({
      estimates: [0, 0],
      observations: [
        tape('a', fixed(0, 0), p, 5, 0.01),
        tape('b', fixed(10, 0), p, Math.sqrt(65), 0.01),
        tape('c', fixed(0, 10), p, Math.sqrt(45), 0.01),
      ],
    });
    expect(result.status).toBe('converged');
    expect(result.estimates[0]).toBeCloseTo(3, 9);
    expect(result.estimates[1]).toBeCloseTo(4, 9);
  });
});

describe('bad condition', () => {
  it('takes the QR, says so, and keeps the digits that the normals lose', () => {
    // Two unknowns known by their sum to 1e-6 and by their difference to 1e3 only.
    const sum = (id: string, a: number, b: number, value: number, sigma: number): Observation => ({
      kind: 'custom',
      id,
      value,
      sigma,
      evaluate: (x) => a * (x[0] ?? 0) + b * (x[1] ?? 0),
      gradient: (_, out) => {
        out.add(0, a);
        out.add(1, b);
      },
    });
    const result = solved({
      estimates: [0, 0],
      observations: [
        sum('sum', 1, 1, 10, 1e-5),
        sum('sum again', 1, 1, 10, 1e-5),
        sum('difference', 1, -1, 4, 1e3),
      ],
    });
    expect(result.solver).toBe('qr');
    expect(result.status).toBe('converged');
    expect(result.estimates[0]).toBeCloseTo(7, 6);
    expect(result.estimates[1]).toBeCloseTo(3, 6);
    // Var(x0) = (σ_sum²/2 + σ_difference²) / 4.
    expect(result.covarianceOf(0, 0) / ((1e-10 / 2 + 1e6) / 4)).toBeCloseTo(1, 6);
  });
});

describe('no convergence', () => {
  it('is a status, not an exception', () => {
    const observations = [
      tape('a', fixed(0, 0), p, 25, 0.02),
      tape('b', fixed(30, 0), p, 20, 0.02),
      tape('c', fixed(0, 30), p, 24, 0.02),
    ];
    expect(adjust({ estimates: [200, 10], observations }, { maxIterations: 1 }).status).toBe('not-converged');
    expect(adjust({ estimates: [200, 10], observations }).status).toBe('converged');
  });
});

describe('a caller that asks it to stop', () => {
  const observations = [
    tape('a', fixed(0, 0), p, 25, 0.02),
    tape('b', fixed(30, 0), p, 20, 0.02),
    tape('c', fixed(0, 30), p, 24, 0.02),
  ];
  const problem = { estimates: [200, 10], observations };

  it('is heard before the first step', () => {
    const result = adjust(problem, { shouldStop: () => true });
    expect(result).toMatchObject({ status: 'stopped', iterations: 0 });
    expect([...result.estimates]).toEqual([200, 10]);
    expect(result).not.toHaveProperty('covarianceOf');
  });

  it('is asked once a step, and gets the estimates of as many steps as it allowed', () => {
    let asked = 0;
    const result = adjust(problem, { shouldStop: () => ++asked > 2 });
    expect(result).toMatchObject({ status: 'stopped', iterations: 2 });
    expect([...result.estimates]).toEqual([...adjust(problem, { maxIterations: 2 }).estimates]);
  });

  it('is not asked once the end is reached', () => {
    let asked = 0;
    const ask = () => {
      asked++;
      return false;
    };
    const result = adjust(problem, { shouldStop: ask });
    expect(result.status).toBe('converged');
    expect(asked).toBe(result.iterations);
  });
});

describe('damping', () => {
  it('brings home a start from which undamped steps run away: atan x = 0 from 3', () => {
    // Newton's method on atan diverges from |x| > 1.3917 (a standard textbook case; the bound solves 2x = (1 + x²) atan x).
    const atan: Observation = {
      kind: 'custom',
      id: 'atan',
      value: 0,
      sigma: 1,
      evaluate: (x) => Math.atan(x[0] ?? 0),
      gradient: (x, out) => {
        out.add(0, 1 / (1 + (x[0] ?? 0) ** 2));
      },
    };
    const result = solved({ estimates: [3], observations: [atan, { ...atan, id: 'again' }] });
    expect(result.status).toBe('converged');
    expect(result.estimates[0]).toBeCloseTo(0, 8);
  });

  it('refuses a step to where an observation is not defined: ln x = 1 from 20', () => {
    const log: Observation = {
      kind: 'custom',
      id: 'ln',
      value: 1,
      sigma: 0.1,
      evaluate: (x) => Math.log(x[0] ?? 0),
      gradient: (x, out) => {
        out.add(0, 1 / (x[0] ?? 0));
      },
    };
    const result = solved({ estimates: [20], observations: [log, { ...log, id: 'again' }] });
    expect(result.status).toBe('converged');
    expect(result.estimates[0]).toBeCloseTo(Math.E, 8);
  });
});

describe("a programmer's mistake throws and names the value", () => {
  const good = tape('tape to oak', fixed(0, 0), p, 25, 0.02);
  it.each([
    ['a start value', [15, Number.NaN], good, 'estimates[1] is NaN'],
    [
      'an observed value',
      [15, 10],
      { ...good, value: Number.NaN },
      'observation "tape to oak": value is NaN',
    ],
    ['a sigma', [15, 10], { ...good, sigma: 0 }, 'observation "tape to oak": sigma is 0'],
    [
      'a coordinate',
      [15, 10],
      tape('t', fixed(0, Number.POSITIVE_INFINITY), p, 1, 1),
      'from.fixed.y is Infinity',
    ],
    ['an index', [15, 10], tape('t', unknown(1), p, 1, 1), 'from.at is 1, not the index of an unknown'],
  ] as const)('%s', (_, estimates, observation, message) => {
    expect(() => adjust({ estimates, observations: [observation] })).toThrow(RangeError);
    expect(() => adjust({ estimates, observations: [observation] })).toThrow(message);
  });

  it('a custom observation that is not finite at the start, or whose derivative is not', () => {
    const custom = (value: number, slope: number): Observation => ({
      kind: 'custom',
      id: 'made up',
      value: 1,
      sigma: 1,
      evaluate: () => value,
      gradient: (_, out) => {
        out.add(0, slope);
      },
    });
    const run = (value: number, slope: number) =>
      adjust({ estimates: [1], observations: [custom(value, slope)] });
    expect(() => run(Number.NaN, 1)).toThrow('"made up": not finite at the start values');
    expect(() => run(1, Number.NaN)).toThrow('"made up": a derivative is not finite');
  });

  it('a covariance of an unknown that is not there', () => {
    const result = solved({
      estimates: [1],
      observations: [{ kind: 'coordinate', id: 'c', unknown: 0, value: 1, sigma: 1 }],
    });
    expect(() => result.covarianceOf(0, 1)).toThrow('unknown 1');
    expect(() => result.covarianceOf(-1, 0)).toThrow('unknown -1');
  });
});
