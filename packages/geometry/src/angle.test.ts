import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  azimuthBetween,
  deflectionBetween,
  degrees,
  normalizeAzimuth,
  pointAtAzimuth,
  radians,
  signedAngle,
} from './angle';
import { distance } from './point';

const origin = { x: 0, y: 0 };
const angles = fc.double({ min: -50, max: 50, noNaN: true });

describe('azimuths', () => {
  it('run clockwise from +y', () => {
    const quarters = [
      { x: 0, y: 2 },
      { x: 2, y: 0 },
      { x: 0, y: -2 },
      { x: -2, y: 0 },
    ].map((p) => degrees(azimuthBetween(origin, p)));
    expect(quarters).toEqual([0, 90, 180, 270]);
  });

  it('stay under a full turn, also just west of north', () => {
    expect(normalizeAzimuth(-1e-17)).toBe(0);
    fc.assert(
      fc.property(angles, (a) => {
        const n = normalizeAzimuth(a);
        expect(n).toBeGreaterThanOrEqual(0);
        expect(n).toBeLessThan(2 * Math.PI);
        expect(Math.cos(n - a)).toBeCloseTo(1, 12);
      }),
    );
  });

  it('and distance go out and come back, at every scale', () => {
    fc.assert(
      fc.property(angles, fc.double({ min: 1e-3, max: 1e6, noNaN: true }), (azimuth, length) => {
        const p = pointAtAzimuth(origin, azimuth, length);
        expect(distance(origin, p) / length).toBeCloseTo(1, 12);
        expect(Math.cos(azimuthBetween(origin, p) - azimuth)).toBeCloseTo(1, 12);
      }),
    );
  });
});

describe('turns', () => {
  it('are positive to the right, with a straight reversal +180°', () => {
    expect(degrees(deflectionBetween(radians(350), radians(10)))).toBeCloseTo(20, 12);
    expect(degrees(deflectionBetween(radians(10), radians(350)))).toBeCloseTo(-20, 12);
    expect(deflectionBetween(0, Math.PI)).toBe(Math.PI);
    expect(signedAngle(-Math.PI)).toBe(Math.PI);
  });
});
