import type { Point } from '@footmark/geometry';

/** A bend of a route: which of the request's, and to the right or to the left looking with the flow. */
export type RouteBend = { readonly bend: string; readonly to: 'right' | 'left' };

/**
 * A route: straight legs between its points, the first its start, the last on one of its ends; at each point between, the arc of a standard
 * bend is tangent to both legs.
 */
export type Route = {
  readonly points: readonly Point[];
  /** One for each point between start and end. */
  readonly bends: readonly RouteBend[];
  readonly end: string;
};
