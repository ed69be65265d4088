import { pixelToPlan, planToPixel } from '@footmark/site';
import { describe, expect, it } from 'vitest';
import { cornersOf, isInPicture, shiftedPlace, upAzimuth } from './picturePlace';

/** 0.05 m to the pixel, its upward edge to the east: right along it is south. */
const eastUp = { toPlan: { a: 0, b: -0.05, tx: 10, ty: 20 } };

describe('a picture that is turned to the east', () => {
  it('lies clockwise from its corner', () => {
    expect(cornersOf(eastUp, { widthPx: 400, heightPx: 200 })).toEqual([
      { x: 10, y: 20 },
      { x: 10, y: 0 },
      { x: 0, y: 0 },
      { x: 0, y: 20 },
    ]);
  });

  it('says the azimuth of its upward edge', () => {
    expect(upAzimuth(eastUp)).toBeCloseTo(Math.PI / 2, 12);
  });

  it('is tapped in its own pixels', () => {
    const pixel = planToPixel(eastUp, { x: 7.5, y: 15 });
    expect(pixel.x).toBeCloseTo(100, 9);
    expect(pixel.y).toBeCloseTo(50, 9);
  });

  it('moves as a whole', () => {
    const moved = shiftedPlace(eastUp, { x: -3, y: 4 });
    expect(pixelToPlan(moved, { x: 100, y: 50 })).toEqual({ x: 4.5, y: 19 });
  });
});

it('keeps the upward azimuth in [0, 2π)', () => {
  const turned = (a: number, b: number) => upAzimuth({ toPlan: { a, b, tx: 0, ty: 0 } });
  expect(turned(1, 0)).toBeCloseTo(0, 12);
  expect(turned(1, 1e-18)).toBeLessThan(2 * Math.PI);
  expect(turned(0, 1)).toBeCloseTo(1.5 * Math.PI, 12);
});

it('counts the edges as part of the picture', () => {
  const size = { widthPx: 40, heightPx: 30 };
  expect(isInPicture(size, { x: 0, y: 30 })).toBe(true);
  expect(isInPicture(size, { x: 40.01, y: 3 })).toBe(false);
  expect(isInPicture(size, { x: 3, y: -0.01 })).toBe(false);
});
