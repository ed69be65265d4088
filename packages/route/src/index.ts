export type { Route, RouteBend } from './foundRoute';
export type { Area, Bend, Headings, Obstacle, RouteEnd, RouteRequest, Shape } from './request';
