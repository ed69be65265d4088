import type { Route } from '../foundRoute';
import type { RouteRequest } from '../request';
import { type RouteCost, routeCost } from './routeCost';

/** A route with what it costs. */
export type RatedRoute = Route & { readonly cost: RouteCost };

export function rated(request: RouteRequest, route: Route): RatedRoute {
  return { ...route, cost: routeCost(request, route) };
}
