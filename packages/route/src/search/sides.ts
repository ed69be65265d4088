import {
  azimuthBetween,
  nearestOnSegment,
  type Point,
  pointAtAzimuth,
  signedAngle,
} from '@footmark/geometry';
import type { Route } from '../foundRoute';
import type { Obstacle, Shape } from '../request';
import type { Solid } from './solid';

/** How far (m) a fence goes on: past every yard. */
const FAR_M = 10_000;
/** What a leg comes as near to as this beyond what is asked (m) has shaped it. */
const SHAPED_M = 0.05;
const THIN_M = 1e-3;

/** Where a route is nearest to a place of a shape, and to which side of the route that place lies. */
type Passing = {
  readonly on: Point;
  readonly away: number;
  readonly side: 'right' | 'left';
};

/** A route goes by each obstacle on one side of it: the text is the same for routes that take the same sides. */
export function sidesOf(route: Route, obstacles: readonly Obstacle[]): string {
  return obstacles.map(({ shape }) => passing(route, shape).side[0]).join('');
}

/** The obstacles that a route was led around by. */
export function shapedBy(route: Route, obstacles: readonly Obstacle[], radius: number): readonly Obstacle[] {
  return obstacles.filter(({ shape, clearance }) => {
    const edge = shape.is === 'circle' ? shape.radius : shape.is === 'line' ? shape.halfWidth : 0;
    return passing(route, shape).away - edge <= clearance + radius + SHAPED_M;
  });
}

/**
 * What keeps a route from going by a thing on the side on which another does: from within it outwards, half way between where that one comes
 * from and where it goes, seen from there.
 */
export function fenceAcross(route: Route, { id, shape }: Obstacle): Solid {
  const { on } = passing(route, shape);
  const [start] = route.points;
  const heading = start === undefined ? 0 : azimuthBetween(on, start) + sweepAround(route, on) / 2;
  const far = pointAtAzimuth(on, heading, FAR_M);
  return { id, shape: { is: 'line', points: [on, far], halfWidth: 0 }, need: THIN_M, ends: [] };
}

/** By how much (rad, clockwise) a route goes round a place from its start to its end. */
function sweepAround({ points }: Route, about: Point): number {
  let swept = 0;
  for (const [i, from] of points.entries()) {
    const to = points[i + 1];
    if (to !== undefined) swept += signedAngle(azimuthBetween(about, to) - azimuthBetween(about, from));
  }
  return swept;
}

function passing({ points }: Route, shape: Shape): Passing {
  const places = shape.is === 'circle' ? [shape.centre] : shape.points;
  let nearest: Passing | null = null;
  for (const on of places) {
    for (const [i, from] of points.entries()) {
      const to = points[i + 1];
      if (to === undefined) break;
      const found = nearestOnSegment(on, from, to);
      if (nearest !== null && found.distance >= nearest.away) continue;
      const turn = (to.x - from.x) * (on.y - from.y) - (to.y - from.y) * (on.x - from.x);
      nearest = { on, away: found.distance, side: turn < 0 ? 'right' : 'left' };
    }
  }
  return nearest ?? { on: { x: 0, y: 0 }, away: Infinity, side: 'right' };
}
