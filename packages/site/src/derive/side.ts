import type { Point } from '@footmark/geometry';

export type Side = 'left' | 'right';

/** Seen from `a` looking to `b`; a point on the line counts as left. */
export function sideOf(p: Point, a: Point, b: Point): Side {
  return (b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x) >= 0 ? 'left' : 'right';
}
