import type { Derived } from '../derive/derive';

/** The paths that any run goes through, in the order of the site. */
export function pathsOnWays(derived: Derived): readonly string[] {
  const used = new Set([...derived.routes.values()].flatMap((route) => route.legs.map((leg) => leg.path)));
  return [...derived.paths.keys()].filter((id) => used.has(id));
}
