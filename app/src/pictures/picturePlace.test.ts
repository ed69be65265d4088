import { describe, expect, it } from 'vitest';
import { cornersOf, isInPicture, metresPerPixel, pixelToPlan, planToPixel, upAzimuth } from './picturePlace';

/** 0.05 m to the pixel, its upward edge to the east: right along it is south. */
const eastUp = { corner: { x: 10, y: 20 }, right: { x: 0, y: -0.05 } };

describe('a picture that is turned to the east', () => {
  it('lies clockwise from its corner', () => {
    expect(cornersOf(eastUp, { widthPx: 400, heightPx: 200 })).toEqual([
      { x: 10, y: 20 },
      { x: 10, y: 0 },
      { x: 0, y: 0 },
      { x: 0, y: 20 },
    ]);
  });

  it('says its scale and the azimuth of its upward edge', () => {
    expect(metresPerPixel(eastUp)).toBe(0.05);
    expect(upAzimuth(eastUp)).toBeCloseTo(Math.PI / 2, 12);
  });

  it('is tapped in its own pixels', () => {
    const pixel = planToPixel(eastUp, { x: 7.5, y: 15 });
    expect(pixel.x).toBeCloseTo(100, 9);
    expect(pixel.y).toBeCloseTo(50, 9);
  });
});

it('goes from pixel to plan and back, whatever its scale and turn', () => {
  for (const [scale, turn] of [
    [1e-3, 0.3],
    [0.02, 2.9],
    [1, -1.2],
    [500, 6],
  ] as const) {
    const place = {
      corner: { x: -812.25, y: 4e4 },
      right: { x: scale * Math.cos(turn), y: scale * Math.sin(turn) },
    };
    const back = planToPixel(place, pixelToPlan(place, { x: 1234.5, y: -67.25 }));
    expect(back.x).toBeCloseTo(1234.5, 4);
    expect(back.y).toBeCloseTo(-67.25, 4);
  }
});

it('keeps the upward azimuth in [0, 2π)', () => {
  expect(upAzimuth({ corner: { x: 0, y: 0 }, right: { x: 1, y: 0 } })).toBe(0);
  expect(upAzimuth({ corner: { x: 0, y: 0 }, right: { x: 1, y: 1e-18 } })).toBeLessThan(2 * Math.PI);
  expect(upAzimuth({ corner: { x: 0, y: 0 }, right: { x: 0, y: 1 } })).toBeCloseTo(1.5 * Math.PI, 12);
});

it('counts the edges as part of the picture', () => {
  const size = { widthPx: 40, heightPx: 30 };
  expect(isInPicture(size, { x: 0, y: 30 })).toBe(true);
  expect(isInPicture(size, { x: 40.01, y: 3 })).toBe(false);
  expect(isInPicture(size, { x: 3, y: -0.01 })).toBe(false);
});
