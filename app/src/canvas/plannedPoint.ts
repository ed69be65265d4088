import { degrees, type Point } from '@footmark/geometry';
import { turnPlace } from '@footmark/reroute';
import { type Derived, drawnTurn, type Ref, type Site } from '@footmark/site';
import type { InMotion } from './overlay';

/** A point of a planned pipe in a hand, with the pipe's points as they were when it was taken; `reach`: plan metres from which turns pull. */
export type PlannedPoint = {
  readonly points: readonly Point[];
  readonly index: number;
  readonly reach: number;
};

/** Null for a point of anything else. */
export function plannedPoint(site: Site, derived: Derived, ref: Ref, reach: number): PlannedPoint | null {
  const path = site.paths.find((p) => p.id === ref.of && p.state === 'proposed');
  const points = derived.paths.get(ref.of)?.points;
  const index = path?.vertices.findIndex((v) => v.id === ref.at) ?? -1;
  return points === undefined || points[index] === undefined ? null : { points, index, reach };
}

/** Where it is put for a hand that is at `p`. */
export function pulledTo(planned: PlannedPoint | null, p: Point): Point {
  if (planned === null) return p;
  return turnPlace(planned.points, planned.index, p, planned.reach) ?? p;
}

/** How the pipe turns there and at the points beside it. */
export function turnsBeside(planned: PlannedPoint | null, at: Point): InMotion['turns'] {
  if (planned === null) return [];
  const points = planned.points.with(planned.index, at);
  return [planned.index - 1, planned.index, planned.index + 1].flatMap((i) => {
    const [turn, place] = [drawnTurn(points, i), points[i]];
    return turn === null || place === undefined ? [] : [{ at: place, degrees: degrees(turn) }];
  });
}
