import { nearestOnSegment, type Point } from '@footmark/geometry';
import type { Obstacle, RouteEnd, RouteRequest, Shape } from '../request';
import { type Ray, spansAhead } from './rayInShape';
import { shapeDistance } from './shapeDistance';
import { type Span, without } from './spans';
import { ON_THE_WALL_M, TOUCH_M } from './tolerances';

/** What the centre line keeps clear of: `need` metres from the shape's edge, but only `need` of an end near that. */
export type Solid = {
  readonly id: string;
  readonly shape: Shape;
  readonly need: number;
  readonly ends: readonly { readonly zone: Shape; readonly need: number }[];
};

export function solidOf(request: RouteRequest, { id, shape, clearance }: Obstacle): Solid {
  const need = clearance + request.diameter / 2;
  const places = [
    { zone: circle(request.start.at), away: shapeDistance(request.start.at, shape) },
    ...request.ends.map((end) => ({ zone: zoneOf(end), away: leastAway(end, shape) })),
  ];
  const ends = places.flatMap(({ zone, away }) => (away < need ? [{ zone, need: away }] : []));
  return { id, shape, need, ends };
}

function circle(centre: Point): Shape {
  return { is: 'circle', centre, radius: 0 };
}

/** Where an end is. */
export function zoneOf({ at }: RouteEnd): Shape {
  return 'from' in at ? { is: 'line', points: [at.from, at.to], halfWidth: 0 } : circle(at);
}

/** Of a piece the nearest place: a route that ends elsewhere on it is held to its own. */
function leastAway({ at }: RouteEnd, shape: Shape): number {
  if (!('from' in at)) return shapeDistance(at, shape);
  const places =
    shape.is === 'circle'
      ? [nearestOnSegment(shape.centre, at.from, at.to).point]
      : shape.points.map((p) => nearestOnSegment(p, at.from, at.to).point);
  return Math.min(...[at.from, at.to, ...places].map((p) => shapeDistance(p, shape)));
}

/** A way that leaves the wall that its end stands on within so much (m) does not run inside. */
const STEP_OFF_M = 0.03;

/** How far (m) a ray goes before it comes too near to a solid by more than `slack` (m); Infinity when it never does. */
export function freeOf(ray: Ray, solid: Solid, freeEnds: number, slack = TOUCH_M): number {
  const full = spansAhead(ray, solid.shape, solid.need - slack);
  if (solid.ends.length === 0) return firstOf(full);
  const zones = solid.ends.map(({ zone, need }) => ({
    zone: spansAhead(ray, zone, freeEnds),
    // an end on the wall, or a hair inside, steps off it, and not into it
    low: need > ON_THE_WALL_M ? spansAhead(ray, solid.shape, need - slack) : inside(ray, solid.shape),
  }));
  const outside = zones.reduce((left, { zone }) => without(left, zone), full);
  return Math.min(firstOf(outside), ...zones.map(({ zone, low }) => firstOf(both(low, zone))));
}

function inside(ray: Ray, shape: Shape): readonly Span[] {
  return spansAhead(ray, shape, 0).filter(([, to]) => to > STEP_OFF_M);
}

function firstOf(spans: readonly Span[]): number {
  let first = Infinity;
  for (const [from, to] of spans)
    if (to > TOUCH_M && to - from > TOUCH_M) first = Math.min(first, Math.max(0, from));
  return first;
}

function both(spans: readonly Span[], others: readonly Span[]): readonly Span[] {
  return spans.flatMap(([a, b]) =>
    others.flatMap(([c, d]): Span[] =>
      Math.min(b, d) > Math.max(a, c) ? [[Math.max(a, c), Math.min(b, d)]] : [],
    ),
  );
}
