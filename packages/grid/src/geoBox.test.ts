import { describe, expect, it } from 'vitest';
import { isInBox, offMiddle } from './geoBox';

const across = { westDeg: 170, southDeg: 50, eastDeg: -160, northDeg: 54 };

describe('a box across the date line', () => {
  it.each([
    [172, 52, true],
    [-170, 52, true],
    [180, 50, true],
    [-180, 54, true],
    [170, 52, true],
    [-160, 52, true],
    [169.9, 52, false],
    [-159.9, 52, false],
    [0, 52, false],
    [180, 49.9, false],
  ])('longitude %s, latitude %s: %s', (longitudeDeg, latitudeDeg, inside) => {
    expect(isInBox(across, { longitudeDeg, latitudeDeg })).toBe(inside);
  });

  it('is 0 in the middle and 1 at an edge', () => {
    expect(offMiddle(across, { longitudeDeg: -175, latitudeDeg: 52 })).toBeCloseTo(0, 12);
    expect(offMiddle(across, { longitudeDeg: 170, latitudeDeg: 52 })).toBeCloseTo(1, 12);
    expect(offMiddle(across, { longitudeDeg: -175, latitudeDeg: 53 })).toBeCloseTo(0.5, 12);
  });
});
