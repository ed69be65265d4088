import { type Point, radians } from '@footmark/geometry';
import { checkRoute } from '../check/checkRoute';
import type { Route } from '../foundRoute';
import type { Bend, Obstacle, RouteEnd, RouteRequest } from '../request';

// One sound route on an invented site, and ways to spoil it or its request by just one thing.

export const INCH = 0.0254;
export const RADIUS = 9 * INCH;
export const at = (x: number, y: number): Point => ({ x, y });
const bend = (id: string, degrees: number, laying: number): Bend => ({
  id,
  turn: radians(degrees),
  radius: RADIUS,
  laying,
  cost: 0.5,
});
export const TUBE = 0.1143;

/** North out of a wall; the way on is barred by a round thing; then on to the north, 2 m to the east. */
export const request: RouteRequest = {
  start: { at: at(0, 0), heading: 0, invert: 10 },
  ends: [
    { id: 'tap', at: at(2, 8), headings: [{ from: 0, to: 0 }], invert: 9.8 },
    { id: 'main', at: { from: at(-4, 8), to: at(4, 8) }, headings: null, invert: 9.8 },
  ],
  diameter: TUBE,
  bends: [bend('22', 22.5, 0.1), bend('45', 45, 0.14), bend('60', 60, 0.19), bend('90', 90, 0.28)],
  leastStraight: 0.1,
  mostBends: 4,
  obstacles: [
    {
      id: 'house',
      shape: { is: 'ring', points: [at(-5, -6), at(5, -6), at(5, 0), at(-5, 0)] },
      clearance: 0.3,
    },
    { id: 'tree', shape: { is: 'circle', centre: at(0, 5.5), radius: 0.4 }, clearance: 0.6 },
  ],
  areas: [],
  freeEnds: 1,
  grade: { least: 1 / 48, kept: true },
};
export const sound: Route = {
  points: [at(0, 0), at(0, 2), at(2, 4), at(2, 8)],
  bends: [
    { bend: '45', to: 'right' },
    { bend: '45', to: 'left' },
  ],
  end: 'tap',
};

export const withPoint = (index: number, point: Point): Route => ({
  ...sound,
  points: sound.points.map((p, i) => (i === index ? point : p)),
});
export const withObstacle = (obstacle: Obstacle): RouteRequest => ({
  ...request,
  obstacles: [...request.obstacles, obstacle],
});
export const withEnd = (end: Partial<RouteEnd>): RouteRequest => ({
  ...request,
  ends: request.ends.map((e) => (e.id === 'tap' ? { ...e, ...end } : e)),
});
export const codes = (asked: RouteRequest, route: Route) => checkRoute(asked, route).map((f) => f.code);
export const onlyFault = (asked: RouteRequest, route: Route) => {
  const faults = checkRoute(asked, route);
  if (faults.length !== 1) throw new Error(`not one fault: ${JSON.stringify(faults)}`);
  return faults[0];
};
