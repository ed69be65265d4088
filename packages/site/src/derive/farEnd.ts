import type { Mark } from './marks';
import { placeOnRoute, type RoutePlace } from './runRoute';
import type { Ways } from './sondePlace';

/** Along the pipe (m) to the lens at the far end of something that goes on; for what is in one place, to that. */
export function alongAtFarEnd({ reading, trace }: Mark): number {
  const { counter, to = counter } = reading;
  return trace.along + trace.scale * Math.max(0, to - counter);
}

/** Where that is, at most at the end of the run's way. Null when the reading has no place. */
export function farEnd({ routes, paths }: Ways, mark: Mark): RoutePlace | null {
  const route = routes.get(mark.run.id);
  if (route === undefined || mark.place === null) return null;
  return placeOnRoute(route, paths, Math.min(route.length, alongAtFarEnd(mark)));
}
