import { visitLegs } from './legs';
import { distance, type Point } from './point';
import type { Region } from './region';
import { ringArea, stretchesInRing } from './ring';

/**
 * Metres of a line that run through a region as `unionOf` and its like give it; `closed` adds the leg from the last point to the
 * first. Sliding along an edge does not count.
 */
export function lineInRegion(points: readonly Point[], closed: boolean, region: Region): number {
  let inside = 0;
  for (const ring of region) {
    const sign = Math.sign(ringArea(ring));
    visitLegs(points, closed, (a, b) => {
      const shares = stretchesInRing(a, b, ring).reduce((sum, { from, to }) => sum + to - from, 0);
      inside += sign * shares * distance(a, b);
    });
  }
  return Math.max(0, inside);
}
