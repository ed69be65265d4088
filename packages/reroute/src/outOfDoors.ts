import { distance, flattenPath, type Point, stretchesInRing } from '@footmark/geometry';
import type { Derived, DerivedPath } from '@footmark/site';

/** Chords of bends stray from them by less than this (m). */
const SAGITTA_M = 0.002;

/** The station (plan metres) at which a pipe leaves the last building that it comes through; 0 for one that begins outside. */
export function outOfDoors({ features }: Derived, on: DerivedPath): number {
  const points = flattenPath(on.line, SAGITTA_M);
  let last = 0;
  for (const { feature, outline } of features.values())
    if (feature.kind === 'building') last = Math.max(last, lastInside(points, outline));
  return Math.min(last, on.length);
}

function lastInside(points: readonly Point[], ring: readonly Point[]): number {
  let [station, last] = [0, 0];
  for (const [i, from] of points.entries()) {
    const to = points[i + 1];
    if (to === undefined) break;
    const length = distance(from, to);
    for (const { to: share } of stretchesInRing(from, to, ring))
      last = Math.max(last, station + share * length);
    station += length;
  }
  return last;
}
