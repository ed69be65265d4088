import type { Point } from '@footmark/geometry';
import type { Route } from '../foundRoute';
import type { RouteEnd, RouteRequest, Shape } from '../request';
import { areasAlong, costBehind } from './areaCost';
import { directionOf } from './direction';
import type { Field } from './field';
import { leastCost } from './leastCost';
import { type LegSetting, legsFrom } from './legsFrom';
import { alongOf, Lines } from './lines';
import { firstOfStep, lengthAfter, type Place, routeOf } from './place';
import type { Ray } from './rayInShape';
import { freeOf, type Solid } from './solid';
import { tablesOf } from './tables';
import type { TurnStep } from './turns';
import { Waiting } from './waiting';

/** What a search looks at. `beside`: what its legs may run along; `accept`: the last word on a whole route. */
export type LegSearch = {
  readonly request: RouteRequest;
  readonly steps: readonly TurnStep[];
  readonly solids: readonly Solid[];
  readonly beside: readonly { readonly shape: Shape; readonly reach: number }[];
  readonly accept: (route: Route) => boolean;
  /** Looks no further than this many places. */
  readonly mostPlaces: number;
  readonly shouldStop: () => boolean;
  readonly field: Field;
  /** Nothing that costs as much is looked at: the cost of a route that is known. */
  readonly below: number;
  /** A route that costs about so many times what the cheapest does at most, the sooner the more; not to the last metre, as the field is not. */
  readonly greed: number;
};

export type Found = { readonly is: 'found'; readonly route: Route; readonly cost: number };
export type BestRoute = Found | { readonly is: 'none' | 'gave-up' | 'stopped' };

/** How often (places) it is asked whether to stop. */
const ASK_EVERY = 64;

/**
 * The cheapest route among those whose legs run beside things or through an end, or whose first leg is as short as its fittings allow: by
 * A* over the places where legs meet. Two bends in a row count as one step.
 */
export function legSearch(search: LegSearch): BestRoute {
  const { request, steps, solids, accept, mostPlaces, shouldStop, below, greed, field } = search;
  const tables = tablesOf(request, steps, search.beside);
  const waiting = new Waiting(tables);
  const lines = new Lines();
  const mostTo = new Map(request.ends.map((end) => [end, lengthAllowed(request, end)]));
  const mostLength = Math.max(...mostTo.values());
  const left = leastCost(request.ends, steps);

  /** What a route costs at least that goes on from there; Infinity when it is of no use. */
  const leastFrom = ({ at, direction }: Pick<Place, 'at' | 'direction'>, cost: number, length: number) => {
    const over = field(at.x, at.y);
    if (cost + Math.max(over, left.distance(at)) >= below) return Infinity;
    const more = left.from(at, direction);
    const rest = Math.max(more.cost, over + more.bends);
    return length + more.length > mostLength || cost + rest >= below ? Infinity : cost + greed * rest;
  };
  const isOfUse = (at: Point, cost: number) => cost + field(at.x, at.y) < below;
  const arrived: LegSetting['arrived'] = (from, end, along, cost) => {
    if (from.length + along <= (mostTo.get(end) ?? 0) && cost < below)
      waiting.push(from, end, along, cost, cost);
  };
  const turned: LegSetting['turned'] = (from, step, along, cost, to) => {
    const least = leastFrom(to, cost, lengthAfter(from, along, step));
    if (least < Infinity) waiting.push(from, step, along, cost, least);
  };
  const freeAlong = (ray: Ray, atLeast: number) => {
    let free = Infinity;
    for (const solid of solids) {
      free = Math.min(free, freeOf(ray, solid, request.freeEnds));
      if (free < atLeast) break;
    }
    return free;
  };

  const { at, heading } = request.start;
  const start = { at, direction: directionOf(heading), cost: 0, length: 0, bends: 0 };
  let place: Place | null = { ...start, from: null, step: null, end: null };
  if (leastFrom(place, 0, 0) === Infinity) return { is: 'none' };
  for (let looked = 0; place !== null; looked++, place = waiting.pop()) {
    if (looked % ASK_EVERY === 0 && shouldStop()) return { is: 'stopped' };
    const { direction, step, from, end } = place;
    if (end !== null) {
      const route = routeOf(place, end);
      if (accept(route)) return { is: 'found', route, cost: place.cost };
      continue;
    }
    if (looked >= mostPlaces) return { is: 'gave-up' };
    if (from !== null && step !== null && step.between !== null) {
      const { turn, length } = step.between;
      const { ahead } = tables.turned(from.direction, turn);
      if (freeAlong({ from: firstOfStep(place, step, from), ahead }, length) < length) continue;
    }
    const ray = { from: place.at, ahead: direction.ahead };
    const free = freeAlong(ray, 0);
    const areas = areasAlong(request.areas, ray);
    const along = alongOf(direction, place.at);
    const leg = { at: place.at, along, until: along + free, cost: place.cost, bends: place.bends };
    if (!lines.isWorth(direction, leg, (before) => costBehind(areas, along - before))) continue;
    legsFrom(place, { request, steps, tables, free, areas, isOfUse, arrived, turned });
  }
  return { is: 'none' };
}

/** The longest that a route to an end may be for the fall that there is; Infinity when that is not known or not kept. */
function lengthAllowed({ start, grade }: RouteRequest, { invert }: RouteEnd): number {
  if (!grade.kept || grade.least <= 0 || start.invert === null || invert === null) return Infinity;
  return (start.invert - invert) / grade.least;
}
