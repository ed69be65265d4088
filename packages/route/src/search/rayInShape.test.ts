import { type Point, pointAtAzimuth } from '@footmark/geometry';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Shape } from '../request';
import { rayInShape } from './rayInShape';
import { shapeDistance } from './shapeDistance';

// Where a ray lies in a shape, held against the distance of places along it (clearances of the geometry package, which are held against
// another library).

const wavy = (corners: number, radius: number): readonly Point[] =>
  Array.from({ length: corners }, (_, i) => {
    const azimuth = (2 * Math.PI * i) / corners;
    return pointAtAzimuth({ x: 3, y: -2 }, azimuth, radius * (1 + 0.2 * Math.sin(9 * azimuth)));
  });

const shapes: readonly (readonly [string, Shape])[] = [
  ['a circle', { is: 'circle', centre: { x: 2, y: 1 }, radius: 3 }],
  ['a ring of 5 corners', { is: 'ring', points: wavy(5, 6) }],
  ['a ring of 1000 corners', { is: 'ring', points: wavy(1000, 8) }],
  ['a line of 1000 points', { is: 'line', points: wavy(1000, 8), halfWidth: 0.2 }],
];

const ray = fc.record({
  x: fc.double({ min: -12, max: 12, noNaN: true }),
  y: fc.double({ min: -12, max: 12, noNaN: true }),
  heading: fc.double({ min: 0, max: 6.28, noNaN: true }),
  reach: fc.constantFrom(0, 0.3, 2),
});

describe('rayInShape', () => {
  it.each(shapes)('holds the places of a ray that are in %s or near it, and no others', (_, shape) => {
    fc.assert(
      fc.property(ray, ({ x, y, heading, reach }) => {
        const ahead = { x: Math.sin(heading), y: Math.cos(heading) };
        const spans = rayInShape({ from: { x, y }, ahead }, shape, reach);
        for (let t = -20; t <= 20; t += 0.71) {
          const away = shapeDistance({ x: x + t * ahead.x, y: y + t * ahead.y }, shape) - reach;
          if (Math.abs(away) < 1e-6) continue;
          expect(spans.some(([from, to]) => t > from && t < to)).toBe(away < 0);
        }
      }),
      { numRuns: 100, seed: 7 },
    );
  });
});
