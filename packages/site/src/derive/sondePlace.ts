import type { DerivedPath } from './derivePaths';
import type { Mark } from './marks';
import { placeOnRoute, type RoutePlace, type RunRoute } from './runRoute';

/** The ways of the runs by run id, and the paths that they lead through. */
export type Ways = {
  readonly routes: ReadonlyMap<string, RunRoute>;
  readonly paths: ReadonlyMap<string, DerivedPath>;
};

/**
 * Where the computation has the sonde of a reading: a head's length behind the lens, and at the entry while it still hangs in the riser.
 * Null when the reading has no place.
 */
export function sondePlace({ routes, paths }: Ways, mark: Mark): RoutePlace | null {
  const route = routes.get(mark.run.id);
  if (route === undefined || mark.place === null) return null;
  return placeOnRoute(route, paths, Math.max(0, mark.trace.along - mark.trace.tail));
}
