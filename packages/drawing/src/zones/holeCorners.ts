import { type Point, pointAtAzimuth } from '@footmark/geometry';
import type { SearchZone } from '@footmark/site';

/** Corners of a hole about a place, its length along the azimuth of `flow` (rad): behind left, ahead left, ahead right, behind right. */
export function holeCorners(at: Point, flow: number, hole: SearchZone['hole']): readonly Point[] {
  const corner = (ahead: number, right: number) =>
    pointAtAzimuth(
      pointAtAzimuth(at, flow, (ahead * hole.length) / 2),
      flow + Math.PI / 2,
      (right * hole.width) / 2,
    );
  return [corner(-1, -1), corner(1, -1), corner(1, 1), corner(-1, 1)];
}
