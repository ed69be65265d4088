import { pointInRing } from '@footmark/geometry';
import { describe, expect, it } from 'vitest';
import { placesInArea } from './placesInArea';

const angle = [
  { x: 0, y: 0 },
  { x: 10, y: 0 },
  { x: 10, y: 2 },
  { x: 4, y: 2 },
  { x: 4, y: 8 },
  { x: 0, y: 8 },
];

describe('placesInArea', () => {
  it('gives places inside of an angle, the roomiest first', () => {
    const places = placesInArea(angle);
    expect(places.length).toBeGreaterThan(2);
    for (const p of places) expect(pointInRing(p, angle)).toBe('inside');
    expect(places[0].x).toBeLessThan(4);
  });

  it('gives places that are apart', () => {
    const places = placesInArea(angle);
    places.forEach((p, i) => {
      for (const q of places.slice(i + 1)) expect(Math.hypot(p.x - q.x, p.y - q.y)).toBeGreaterThan(1);
    });
  });

  it('gives the first corner of an area without width', () => {
    expect(
      placesInArea([
        { x: 1, y: 1 },
        { x: 3, y: 1 },
      ]),
    ).toEqual([{ x: 1, y: 1 }]);
  });
});
