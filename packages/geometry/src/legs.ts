import type { Point } from './point';

/**
 * Calls `visit` for each leg: leg i runs from point i to point i + 1. A closed line has one more, from the
 * last point back to the first. Fewer than two points have no legs.
 */
export function visitLegs(
  points: readonly Point[],
  closed: boolean,
  visit: (a: Point, b: Point, leg: number) => void,
): void {
  const [first] = points;
  if (first === undefined || points.length < 2) return;
  let a = first;
  for (let leg = 0; leg < points.length - 1; leg += 1) {
    const b = points[leg + 1];
    if (b === undefined) return;
    visit(a, b, leg);
    a = b;
  }
  if (closed) visit(a, first, points.length - 1);
}
