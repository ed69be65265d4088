// Sources: none published; what a change of frame or unit must do to an adjustment.
import type { Observation, Solved, Station } from '@footmark/adjust';
import { describe, expect, it } from 'vitest';
import { seededNetwork } from './seededNetwork';
import { solved } from './solved';

type Place = (x: number, y: number) => readonly [number, number];

const yard = seededNetwork(5, 12, 90);
const want = solved(yard);
/** At a level where a clean yard has some. */
const suspectIds = (result: Solved) => result.suspects(0.2).map((group) => group.map(({ id }) => id));

/** The yard with every place moved, lengths multiplied by `scale`, and coordinates observed where the move takes them. */
function movedYard(move: Place, scale: number) {
  const at = (values: readonly number[]) => values.map((_, i) => moved(values, i));
  const moved = (values: readonly number[], i: number) => {
    const even = i - (i % 2);
    return move(values[even] ?? 0, values[even + 1] ?? 0)[i % 2] ?? Number.NaN;
  };
  const place = (s: Station): Station => {
    if ('at' in s) return s;
    const [x, y] = move(s.fixed.x, s.fixed.y);
    return { fixed: { x, y } };
  };
  const observations = yard.observations.map(movedObservation);

  return { estimates: at(yard.estimates), observations, expected: at([...want.estimates]) };

  function movedObservation(o: Observation): Observation {
    const length = { value: o.value * scale, sigma: o.sigma * scale };
    switch (o.kind) {
      case 'coordinate': {
        const other = yard.truth[o.unknown - (o.unknown % 2) + (1 - (o.unknown % 2))] ?? 0;
        const pair = o.unknown % 2 === 0 ? move(o.value, other) : move(other, o.value);
        return { ...o, value: pair[o.unknown % 2] ?? Number.NaN, sigma: o.sigma * scale };
      }
      case 'distance':
        return { ...o, ...length, from: place(o.from), to: place(o.to) };
      case 'offset':
        return { ...o, ...length, point: place(o.point), from: place(o.from), to: place(o.to) };
      case 'azimuth':
        return { ...o, from: place(o.from), to: place(o.to) };
      case 'angle':
        return {
          ...o,
          station: place(o.station),
          backsight: place(o.backsight),
          foresight: place(o.foresight),
        };
      case 'custom':
        return o;
    }
  }
}

describe.each([
  ['a unit of millimetres', (x: number, y: number) => [1000 * x, 1000 * y] as const, 1000, 1e-9],
  ['a unit of kilometres', (x: number, y: number) => [x / 1000, y / 1000] as const, 1e-3, 1e-15],
  ['a unit of micrometres', (x: number, y: number) => [1e6 * x, 1e6 * y] as const, 1e6, 1e-6],
  // Doubles at 4.4e6 m are 1e-9 m apart.
  ['a frame far off', (x: number, y: number) => [x + 485478.25, y + 4422221.5] as const, 1, 2e-8],
])('%s', (_, move, scale, tolerance) => {
  it('moves the estimates and leaves the statistics', () => {
    const { estimates, observations, expected } = movedYard(move, scale);
    const got = solved({ estimates, observations });
    expect(got.status).toBe('converged');
    expected.forEach((value, i) => {
      expect(Math.abs((got.estimates[i] ?? Number.NaN) - value)).toBeLessThan(tolerance);
    });
    expect(got.vTPv / want.vTPv).toBeCloseTo(1, 5);
    expect(got.covarianceOf(4, 5) / (scale * scale * want.covarianceOf(4, 5))).toBeCloseTo(1, 5);
    expect(suspectIds(got)).toEqual(suspectIds(want));
  });
});

it('gives the same whatever the order of the observations', () => {
  const reversed = solved({ estimates: yard.estimates, observations: [...yard.observations].reverse() });
  reversed.estimates.forEach((value, i) => {
    expect(Math.abs(value - (want.estimates[i] ?? Number.NaN))).toBeLessThan(1e-10);
  });
  expect(suspectIds(reversed)).toEqual(suspectIds(want));
  expect(suspectIds(want).length).toBeGreaterThan(3);
});

it.each([
  ['far off', 485478.25, 4422221.5],
  ['far to the east only', 4422221.5, 0],
])(
  'settles at the rounding of coordinates %s, for tapes of a hundred-thousandth of a millimetre',
  (_, dx, dy) => {
    const { estimates, observations } = movedYard((x, y) => [x + dx, y + dy], 1);
    const tight = observations.map((o) => ({ ...o, sigma: o.sigma * 1e-6 }));
    const result = solved({ estimates, observations: tight });
    expect(result.status).toBe('converged');
    expect(result.iterations).toBeLessThan(15);
  },
);

it('settles where the truth fits without a residual, at once from there and soon from elsewhere', () => {
  const exact = yard.observations.map((o, i) => ({ ...o, value: o.value + (want.residuals[i] ?? 0) }));
  for (const start of [yard.estimates, [...want.estimates]]) {
    const result = solved({ estimates: start, observations: exact });
    expect(result.status).toBe('converged');
    expect(result.iterations).toBeLessThan(8);
    expect(result.vTPv).toBeLessThan(1e-18);
  }
});
