import { type Point, pointAtAzimuth, radians } from '@footmark/geometry';
import { describe, expect, it } from 'vitest';
import { directionOf } from './direction';
import { tracksBeside } from './tracks';

// A leg touches a round thing on two lines, a corner on none where the outline itself is in the way (plane geometry).

const at = (x: number, y: number): Point => ({ x, y });
const north = directionOf(0);
const tracks = (points: readonly Point[], reach: number, direction = north) =>
  tracksBeside({ is: 'line', points, halfWidth: 0 }, reach, direction).toSorted((a, b) => a - b);

describe('tracksBeside', () => {
  it('touches a circle of a thousand corners on its two sides', () => {
    const points = Array.from({ length: 1000 }, (_, i) => pointAtAzimuth(at(3, 1), radians(0.36 * i), 2));
    for (const heading of [0, 0.3, 1.7]) {
      const direction = directionOf(heading);
      const middle = 3 * direction.right.x + direction.right.y;
      const found = tracksBeside({ is: 'ring', points }, 0.5, direction).toSorted((a, b) => a - b);
      expect(found).toHaveLength(2);
      expect(found[0]).toBeCloseTo(middle - 2.5, 4);
      expect(found[1]).toBeCloseTo(middle + 2.5, 4);
    }
  });

  it('touches a corner unless another comes before it', () => {
    const zigzag = [at(0, 0), at(1, 2), at(0.7, 2.15), at(0.8, 2.3), at(0, 5)];
    // at (0.8, 2.3) a leg 0.5 m to the right would pass the corner before at √(0.3² + 0.3²) = 0.42 m
    expect(tracks(zigzag, 0.5)).toEqual([-0.5, expect.closeTo(0.2, 9), 1.5]);
    expect(tracks(zigzag, 0)).toEqual([0, 0.7, 0.8, 1]);
  });

  it('takes lines along a rough edge that differ by millimetres as one, the furthest out', () => {
    const rough = Array.from({ length: 200 }, (_, i) => at(i % 2 === 0 ? 0 : 0.004, 0.5 * i));
    expect(tracks(rough, 0.3)).toEqual([-0.3, 0.304]);
  });
});
