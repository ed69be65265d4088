import { distance, type Point } from '@footmark/geometry';
import type { Route } from '../foundRoute';
import type { Obstacle, RouteRequest } from '../request';
import type { LinePiece } from './centreLine';
import { edgeDistance } from './edgeDistance';
import type { RouteFault } from './routeFault';
import { PLACE_M, STEP_M } from './tolerances';

/** For each obstacle that the line is too near to: where it is worst. */
export function clearanceFaults(
  request: RouteRequest,
  route: Route,
  line: readonly LinePiece[],
): readonly RouteFault[] {
  const faults: RouteFault[] = [];
  const last = route.points.at(-1) ?? request.start.at;
  for (const obstacle of request.obstacles) {
    const clearanceAt = (p: Point) => edgeDistance(p, obstacle.shape) - request.diameter / 2;
    const free = [request.start.at, last].map((at) => ({ at, clearance: clearanceAt(at) }));
    const askedAt = (p: Point) =>
      free.reduce(
        (asked, end) =>
          distance(p, end.at) <= request.freeEnds + PLACE_M ? Math.min(asked, end.clearance) : asked,
        obstacle.clearance,
      );
    const worst = worstAlong(line, obstacle, { clearanceAt, askedAt });
    if (worst !== null && worst.clearance < worst.asked - PLACE_M) {
      const { at, clearance, asked } = worst;
      faults.push({ code: 'too-near', at, values: { obstacle: obstacle.id, clearance, asked } });
    }
  }
  return faults;
}

type Measure = {
  readonly clearanceAt: (p: Point) => number;
  readonly askedAt: (p: Point) => number;
};

type Measured = { readonly at: Point; readonly clearance: number; readonly asked: number };

/**
 * Goes along the line, in steps of no more than `STEP_M` wherever the obstacle is nearer than it asks anywhere: a metre along the line
 * brings it no more than a metre nearer, so that nothing is missed by going as far as there is room.
 */
function worstAlong(
  line: readonly LinePiece[],
  obstacle: Obstacle,
  { clearanceAt, askedAt }: Measure,
): Measured | null {
  let worst: Measured | null = null;
  for (const piece of line) {
    let along = 0;
    for (;;) {
      const at = piece.at(along);
      const clearance = clearanceAt(at);
      const asked = askedAt(at);
      if (worst === null || clearance - asked < worst.clearance - worst.asked)
        worst = { at, clearance, asked };
      if (along >= piece.length) break;
      along = Math.min(piece.length, along + Math.max(STEP_M, clearance - obstacle.clearance));
    }
  }
  return worst;
}
