import type { Point } from '@footmark/geometry';

/** Legs in a row of an outline, from point `first` on and before point `end`, and the box around them. */
export type Run = {
  readonly first: number;
  readonly end: number;
  readonly low: Point;
  readonly high: Point;
};

/** So many legs are looked at together: a long outline is mostly far from any one ray. */
const LEGS_OF_RUN = 16;

const known = new WeakMap<readonly Point[], readonly Run[]>();

/** An outline in runs, computed once for each; the leg that closes it is in the last. */
export function runsOf(points: readonly Point[]): readonly Run[] {
  const before = known.get(points);
  if (before !== undefined) return before;
  const found: Run[] = [];
  for (let first = 0; first < points.length; first += LEGS_OF_RUN) {
    const end = Math.min(points.length, first + LEGS_OF_RUN);
    const [low, high] = [
      { x: Infinity, y: Infinity },
      { x: -Infinity, y: -Infinity },
    ];
    for (let i = first; i <= end; i++) {
      const p = points[i % points.length];
      if (p === undefined) continue;
      low.x = Math.min(low.x, p.x);
      low.y = Math.min(low.y, p.y);
      high.x = Math.max(high.x, p.x);
      high.y = Math.max(high.y, p.y);
    }
    found.push({ first, end, low, high });
  }
  known.set(points, found);
  return found;
}
