import { distance, flattenPath, type Point } from '@footmark/geometry';
import type { Route } from '../foundRoute';
import type { Area, Obstacle, RouteRequest } from '../request';
import { rayInShape } from './rayInShape';
import { routeLine } from './routeLine';
import { freeOf, solidOf } from './solid';
import { lengthUpTo } from './spans';
import { ON_THE_WALL_M } from './tolerances';

/** Arcs are taken as chords that stray from them by less than this (m), and this much is forgiven. */
const SAGITTA_M = 2e-4;

/** The obstacles that a route comes too near to, by its true line and its own end. */
export function obstaclesHit(
  request: RouteRequest,
  route: Route,
  among: readonly Obstacle[],
): readonly Obstacle[] {
  const last = route.points.at(-1);
  const line = routeLine(request, route);
  if (line === null || last === undefined) return [];
  const ends = request.ends.flatMap((end) => (end.id === route.end ? [{ ...end, at: last }] : []));
  const rays = raysOf(flattenPath(line, SAGITTA_M));
  return among.filter((obstacle) => {
    const solid = solidOf({ ...request, ends }, obstacle);
    // a piece to arrive at may lie in a thing in part: not there
    if (solid.ends.some(({ need }) => need < -ON_THE_WALL_M)) return true;
    return rays.some((ray) => freeOf(ray, solid, request.freeEnds, 2 * SAGITTA_M) < ray.length - SAGITTA_M);
  });
}

/** The areas that a route's legs lead through, and what that costs. */
export function areasCrossed(
  { areas }: Pick<RouteRequest, 'areas'>,
  { points }: Route,
): readonly { readonly area: Area; readonly length: number }[] {
  const rays = raysOf(points);
  return areas.flatMap((area) => {
    let length = 0;
    for (const ray of rays) length += lengthUpTo(rayInShape(ray, area.shape, 0), ray.length);
    return length > SAGITTA_M ? [{ area, length }] : [];
  });
}

function raysOf(points: readonly Point[]) {
  return points.slice(1).flatMap((to, i) => {
    const from = points[i] ?? to;
    const length = distance(from, to);
    return length === 0
      ? []
      : [{ from, ahead: { x: (to.x - from.x) / length, y: (to.y - from.y) / length }, length }];
  });
}
