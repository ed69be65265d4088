import type { Route } from '../foundRoute';
import type { RouteRequest } from '../request';
import { areasCrossed } from './routeHits';
import { developedLength } from './routeLine';

/** What makes up the cost of a route, all in metres of pipe: its length along its line, its bends, the ground that costs. */
export type RouteCost = {
  readonly length: number;
  readonly bends: number;
  readonly areas: readonly { readonly area: string; readonly length: number; readonly cost: number }[];
  readonly total: number;
};

export function routeCost(request: RouteRequest, route: Route): RouteCost {
  const length = developedLength(request, route);
  const each = new Map(request.bends.map((b) => [b.id, b.cost]));
  const bends = route.bends.reduce((sum, { bend }) => sum + (each.get(bend) ?? 0), 0);
  const areas = areasCrossed(request, route).map(({ area, length: inside }) => ({
    area: area.id,
    length: inside,
    cost: inside * area.perMetre,
  }));
  return { length, bends, areas, total: length + bends + areas.reduce((sum, a) => sum + a.cost, 0) };
}
