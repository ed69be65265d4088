import { stationOf, stationOfVertex } from '@footmark/geometry';
import {
  addDig,
  addPath,
  type Derived,
  derive,
  freeVertexId,
  insertVertex,
  type Path,
  removeThing,
  type Site,
} from '@footmark/site';
import type { Way } from './ways';

/** An end this near (m) to a pipe lies on it; this near along it to its end it needs no point of its own. */
const ON_PIPE_M = 0.02;
const AT_END_M = 0.05;

/** With what a way is planned: the pipe that it was asked for, ids that are free, and what a new pipe is called. */
export type Planning = {
  readonly asked: string;
  readonly newId: (prefix: 'p' | 'd') => string;
  readonly name: string;
};

/**
 * A site on which a way is planned: a new pipe as a proposed one that joins the pipe that it is brought to, with what is dug; of an old pipe only
 * what is dug. A pipe that was itself only planned gives way to the new one.
 */
export function planWay(site: Site, derived: Derived, way: Way, { asked, newId, name }: Planning): Site {
  if (way.route === null) return withDigs(site, way, way.path.id, newId);
  const planned = site.paths.find((p) => p.id === asked && p.state === 'proposed');
  const cleared =
    planned === undefined ? site : removeThing(site, { id: planned.id, places: derived.points });
  const id = newId('p');
  const path = { ...way.path, id, name: planned?.name ?? name };
  const { onto } = way;
  const joined =
    onto === null || onto === planned?.id ? { site: cleared, path } : joinedTo(cleared, derived, path, onto);
  return withDigs(addPath(joined.site, { path: joined.path }), way, id, newId);
}

function withDigs(site: Site, way: Way, path: string, newId: Planning['newId']): Site {
  return way.digs.reduce(
    (s, dig) => addDig(s, { dig: { ...dig, id: newId('d'), ...(dig.is === 'trench' ? { path } : {}) } }),
    site,
  );
}

/** A new pipe that ends in the middle of another gets a point of that to end at. */
function joinedTo(site: Site, derived: Derived, path: Path, old: string): { site: Site; path: Path } {
  const last = path.vertices.at(-1);
  const on = derived.paths.get(old);
  if (last === undefined || on === undefined || last.spot.by !== 'coordinates') return { site, path };
  const { x, y } = last.spot;
  const { station, distance } = stationOf(on.line, { x, y });
  if (distance > ON_PIPE_M || station > on.length - AT_END_M) return { site, path };
  const after = on.path.vertices.findLast((_, i) => stationOfVertex(on.line, i) < station);
  if (after === undefined) return { site, path };
  const vertex = { id: freeVertexId(on.path.vertices), spot: { by: 'finger', x, y } } as const;
  const inserted = insertVertex(site, { ref: { of: old, at: after.id }, vertex, places: derived.points });
  const end = { ...last, spot: { by: 'at', point: { of: old, at: vertex.id } } as const };
  const joined = { ...path, vertices: [...path.vertices.slice(0, -1), end] };
  // a join that makes a ring of pipes, or none that can be drawn, is left out
  const tried = derive(addPath(inserted, { path: joined }));
  return tried.paths.get(path.id)?.joins?.path === old ? { site: inserted, path: joined } : { site, path };
}
