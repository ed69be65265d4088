import { describe, expect, it } from 'vitest';
import type { Observation } from './observation';
import { addDerivatives, computedValue, residual, wrapAngle } from './observationModel';

const measured = { id: 'o', value: 0, sigma: 1 };
const a = { at: 0 };
const b = { at: 2 };
const c = { at: 4 };
const x = Float64Array.of(1, 2, 5, 5, -2, 9);

const observations: Observation[] = [
  { ...measured, kind: 'coordinate', unknown: 3 },
  { ...measured, kind: 'distance', from: a, to: b },
  { ...measured, kind: 'azimuth', from: a, to: b },
  { ...measured, kind: 'angle', station: a, backsight: b, foresight: c },
  { ...measured, kind: 'offset', point: a, from: b, to: c },
  { ...measured, kind: 'distance', from: { fixed: { x: 1, y: 1 } }, to: c },
  { ...measured, kind: 'offset', point: { fixed: { x: 1, y: 1 } }, from: b, to: c },
];

describe('computedValue', () => {
  it('is that of the plane figure 3-4-5', () => {
    expect(observations.slice(0, 2).map((o) => computedValue(o, x))).toEqual([5, 5]);
  });

  it('measures azimuth clockwise from +y, and an angle clockwise from backsight to foresight', () => {
    const from = { fixed: { x: 0, y: 0 } };
    const north = { fixed: { x: 0, y: 7 } };
    const east = { fixed: { x: 3, y: 0 } };
    const azimuth = (to: typeof from): Observation => ({ ...measured, kind: 'azimuth', from, to });
    expect(computedValue(azimuth(north), x)).toBe(0);
    expect(computedValue(azimuth(east), x)).toBeCloseTo(Math.PI / 2, 15);
    const angle: Observation = {
      ...measured,
      kind: 'angle',
      station: from,
      backsight: north,
      foresight: east,
    };
    expect(computedValue(angle, x)).toBeCloseTo(Math.PI / 2, 15);
  });

  it('counts offsets positive to the left of from → to', () => {
    const offset: Observation = {
      ...measured,
      kind: 'offset',
      point: { fixed: { x: 4, y: 3 } },
      from: { fixed: { x: 0, y: 0 } },
      to: { fixed: { x: 9, y: 0 } },
    };
    expect(computedValue(offset, x)).toBe(3);
  });

  it('is zero, not NaN, for an offset from a line without length', () => {
    expect(computedValue({ ...measured, kind: 'offset', point: a, from: b, to: b }, x)).toBe(0);
  });
});

describe('addDerivatives', () => {
  it.each(observations.map((o, i) => [o.kind, i, o] as const))(
    'of %s (%i) agrees with differences',
    (_, __, o) => {
      const got = new Float64Array(6);
      const add = (i: number, value: number) => {
        got[i] = (got[i] ?? 0) + value;
      };
      addDerivatives(o, x, { add });
      const h = 1e-5;
      for (let i = 0; i < 6; i++) {
        const shifted = (sign: number) =>
          computedValue(
            o,
            x.map((v, k) => (k === i ? v + sign * h : v)),
          );
        expect(got[i]).toBeCloseTo((shifted(1) - shifted(-1)) / (2 * h), 8);
      }
    },
  );

  it('adds nothing where a direction is not defined', () => {
    const add = () => expect.unreachable();
    addDerivatives({ ...measured, kind: 'distance', from: a, to: a }, x, { add });
    addDerivatives({ ...measured, kind: 'azimuth', from: a, to: a }, x, { add });
    addDerivatives({ ...measured, kind: 'offset', point: a, from: b, to: b }, x, { add });
  });
});

describe('wrapAngle', () => {
  it('gives (−π, π], and leaves what is there alone', () => {
    expect(wrapAngle(Math.PI)).toBe(Math.PI);
    expect(wrapAngle(-Math.PI)).toBe(Math.PI);
    expect(wrapAngle(1e-17)).toBe(1e-17);
    expect(wrapAngle(7)).toBeCloseTo(7 - 2 * Math.PI, 15);
    expect(wrapAngle(-20)).toBeCloseTo(-20 + 6 * Math.PI, 14);
  });

  it('is applied to angles, and to a custom observation that asks for it', () => {
    const custom: Observation = { ...measured, kind: 'custom', evaluate: () => 7, gradient: () => undefined };
    expect(residual(custom, x)).toBe(7);
    expect(residual({ ...custom, angular: true }, x)).toBeCloseTo(7 - 2 * Math.PI, 15);
  });
});
