import { distance, nearestOnSegment, type Point } from '@footmark/geometry';
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
  readonly at: Point;
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

/** What keeps a route from going by an obstacle on the side on which another does: from within the obstacle across that, and on. */
export function fenceAcross(route: Route, { id, shape }: Obstacle): Solid {
  const { at, on } = passing(route, shape);
  const away = distance(on, at);
  const toward = away > 0 ? { x: (at.x - on.x) / away, y: (at.y - on.y) / away } : { x: 1, y: 0 };
  const far = { x: on.x + FAR_M * toward.x, y: on.y + FAR_M * toward.y };
  return { id, shape: { is: 'line', points: [on, far], halfWidth: 0 }, need: THIN_M, ends: [] };
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
      nearest = { at: found.point, on, away: found.distance, side: turn < 0 ? 'right' : 'left' };
    }
  }
  return nearest ?? { at: { x: 0, y: 0 }, on: { x: 0, y: 0 }, away: Infinity, side: 'right' };
}
