import { azimuthBetween } from '@footmark/geometry';
import type { Route, RouteRequest } from '@footmark/route';
import { groundTo } from './ground';
import { afterTurn, type SlowPlace, slowTurns } from './slowTurns';

export type MeasuredCost = { readonly cost: number; readonly developed: number };

/** Developed length, bends and areas of a sound route, measured by the slow search's own means. */
export function measuredCost(request: RouteRequest, { points, bends }: Route): MeasuredCost {
  const turns = slowTurns(request);
  const nothing = groundTo({ ...request, obstacles: [] }, request.start.at);
  let [developed, cost, before] = [0, 0, 0];
  for (const [i, from] of points.entries()) {
    const to = points[i + 1];
    if (to === undefined) break;
    const given = bends[i];
    const turn = given && turns.find(({ bend }) => bend.bend === given.bend && bend.to === given.to);
    const heading = azimuthBetween(from, to);
    const [ux, uy] = [Math.sin(heading), Math.cos(heading)];
    const length = Math.hypot(to.x - from.x, to.y - from.y) - before - (turn?.tangent ?? 0);
    const ray = { x: from.x + before * ux, y: from.y + before * uy, ux, uy };
    const place: SlowPlace = {
      x: ray.x + length * ux,
      y: ray.y + length * uy,
      heading,
      developed: developed + length,
      cost: cost + length + nothing.areasAlong(ray)(length),
    };
    const after = turn === undefined ? place : afterTurn(nothing, place, turn);
    if (after === null) throw new Error('nothing stands in the way');
    [developed, cost, before] = [after.developed, after.cost, turn?.tangent ?? 0];
  }
  return { cost, developed };
}
