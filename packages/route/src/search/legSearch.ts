import FlatQueue from 'flatqueue';
import type { Route } from '../foundRoute';
import type { RouteRequest, Shape } from '../request';
import { areasAlong, costBehind } from './areaCost';
import { directionOf } from './direction';
import type { Field } from './field';
import { leastCost } from './leastCost';
import { legsFrom } from './legsFrom';
import { alongOf, Lines } from './lines';
import { firstOfStep, type Place, routeOf } from './place';
import type { Ray } from './rayInShape';
import { freeOf, type Solid } from './solid';
import { tablesOf } from './tables';
import type { TurnStep } from './turns';

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
  /** 1: the cheapest route; above: a route that costs at most so many times as much, found sooner. */
  readonly greed: number;
};

export type LegSearchResult =
  | { readonly is: 'found'; readonly route: Route; readonly cost: number }
  | { readonly is: 'none' | 'gave-up' | 'stopped' };

/** How often (places) it is asked whether to stop. */
const ASK_EVERY = 64;

/**
 * The cheapest route among those whose legs run beside things or through an end, or whose first leg is as short as its fittings allow: by
 * A* over the places where legs meet. Two bends in a row count as one step.
 */
export function legSearch(search: LegSearch): LegSearchResult {
  const { request, steps, solids, accept, mostPlaces, shouldStop, below, greed, field } = search;
  const queue = new FlatQueue<Place>();
  const tables = tablesOf(request, search.beside);
  const lines = new Lines();
  const mostLength = lengthAllowed(request);
  const left = leastCost(request.ends, steps);

  const push = (place: Place) => {
    if (place.end !== null) {
      if (place.length <= mostLength && place.cost < below) queue.push(place, place.cost);
      return;
    }
    const more = left.from(place.at, place.direction);
    const cost = Math.max(more.cost, field(place.at.x, place.at.y) + more.bends);
    if (place.length + more.length > mostLength || place.cost + cost >= below) return;
    queue.push(place, place.cost + greed * cost);
  };
  const isWorth = (x: number, y: number, cost: number) => cost + left.distance(x, y) < below;
  const freeAlong = (ray: Ray, atLeast: number) => {
    let free = Infinity;
    for (const solid of solids) {
      free = Math.min(free, freeOf(ray, solid, request.freeEnds));
      if (free < atLeast) break;
    }
    return free;
  };

  const { at, heading } = request.start;
  push({
    at,
    direction: directionOf(heading),
    cost: 0,
    length: 0,
    bends: 0,
    from: null,
    step: null,
    end: null,
  });
  for (let looked = 0; ; looked++) {
    if (looked % ASK_EVERY === 0 && shouldStop()) return { is: 'stopped' };
    const place = queue.pop();
    if (place === undefined) return { is: 'none' };
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
    legsFrom(place, { request, steps, tables, free, areas, isWorth }, push);
  }
}

/** The longest that a route may be for the fall that there is; Infinity when that is not known or not kept. */
function lengthAllowed({ start, ends, grade }: RouteRequest): number {
  if (!grade.kept || grade.least <= 0 || start.invert === null) return Infinity;
  const from = start.invert;
  const falls = ends.map(({ invert }) => (invert === null ? Infinity : from - invert));
  return Math.max(...falls) / grade.least;
}
