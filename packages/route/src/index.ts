export { checkRoute } from './check/checkRoute';
export type { RouteFault } from './check/routeFault';
export type { Route, RouteBend } from './foundRoute';
export type { Area, Bend, Headings, Obstacle, RouteEnd, RouteRequest, Shape } from './request';
export { type FoundRoutes, findRoutes, type RatedRoute, type RouteOptions } from './search/findRoutes';
export type { RequestPart, RequestProblem } from './search/requestProblem';
export { type RouteCost, routeCost } from './search/routeCost';
