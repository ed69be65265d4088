import type { Derived } from '../derive/derive';
import type { Mark } from '../derive/marks';
import { placeOnRoute, type RoutePlace } from '../derive/runRoute';

/** Where the computation has the sonde of a reading: a head's length behind the lens. Null when the reading has no place. */
export function sondeStation(derived: Pick<Derived, 'routes' | 'paths'>, mark: Mark): RoutePlace | null {
  const route = derived.routes.get(mark.run.id);
  if (route === undefined || mark.place === null) return null;
  return placeOnRoute(route, derived.paths, Math.max(0, mark.trace.along - mark.trace.tail));
}
