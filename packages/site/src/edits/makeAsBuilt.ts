import { asBuiltPoints } from '../derive/asBuilt';
import type { Derived } from '../derive/derive';
import type { Path } from '../document/path';
import { type Edit, unknown } from './edit';

/**
 * Puts down a pipe as it was built beside what it was built by: through the places where crews found it, and by eye where nobody has
 * seen it. `path`: the planned or old pipe, which stays; `id` and `name`: of the new one; `derived`: of this site;
 * `also`: finds of no mark that are of this pipe. Throws for a path that
 * has no curve.
 */
export const makeAsBuilt: Edit<{
  path: string;
  id: string;
  name: string;
  derived: Derived;
  also?: readonly string[];
}> = (site, { path, id, name, derived, also = [] }) => {
  const on = derived.paths.get(path);
  if (on === undefined) return unknown('path', path);
  const built: Path = {
    id,
    name,
    state: 'as-built',
    vertices: asBuiltPoints(site, derived, on, also).map(({ vertex }) => vertex),
    bendRadius: on.path.bendRadius,
    stretches: on.path.stretches,
  };
  return { ...site, paths: [...site.paths, built] };
};
