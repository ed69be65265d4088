import type { Point, Region } from '@footmark/geometry';
import type { LinePrimitive } from '../primitive';

/** Each ring of a region as a closed line. */
export function ringsOf(region: Region): readonly Pick<LinePrimitive, 'kind' | 'points' | 'closed'>[] {
  return region.map((points) => ({ kind: 'line', points, closed: true }));
}

/**
 * A region as one ring to fill: out to each further ring and back over the same line, which the even-odd and the non-zero rule both
 * leave without area.
 */
export function fillRing(region: Region): readonly Point[] {
  const [first, ...others] = region;
  if (first === undefined) return [];
  const [start] = first;
  if (start === undefined || others.length === 0) return first;
  return [...first, start, ...others.flatMap((ring) => [...ring, ...ring.slice(0, 1), start])];
}
