import type { Path, PathVertex, Stretch } from '../document/path';
import type { Site } from '../document/site';
import { changeById, type Edit, unknown } from './edit';

/** Draws a path. */
export const addPath: Edit<{ path: Path }> = (site, { path }) => ({ ...site, paths: [...site.paths, path] });

/** Changes what is said of a path as a whole. */
export const changePath: Edit<{ id: string; facts: Partial<Pick<Path, 'name' | 'state' | 'bendRadius'>> }> = (
  site,
  { id, facts },
) => withPath(site, id, (path) => ({ ...path, ...facts }));

/** Sets the fitting's bend radius and the drop of one vertex; undefined clears. */
export const changePathVertex: Edit<{
  id: string;
  at: string;
  bendRadius: number | undefined;
  drop: number | undefined;
}> = (site, { id, at, bendRadius, drop }) =>
  withPath(site, id, (path) => ({
    ...path,
    vertices: changeById(
      path.vertices,
      at,
      'point',
      (v): PathVertex => ({
        id: v.id,
        spot: v.spot,
        ...(bendRadius === undefined ? {} : { bendRadius }),
        ...(drop === undefined ? {} : { drop }),
      }),
    ),
  }));

/** Starts a new stretch at a station, or changes the one that starts there. Stretches stay in order. */
export const setStretch: Edit<{ id: string; stretch: Stretch }> = (site, { id, stretch }) =>
  withPath(site, id, (path) => ({
    ...path,
    stretches: [...path.stretches.filter((s) => s.from !== stretch.from), stretch].sort(
      (a, b) => a.from - b.from,
    ),
  }));

/** Takes a stretch away: the one before it goes on. The first stays, as every pipe is of something. */
export const removeStretch: Edit<{ id: string; from: number }> = (site, { id, from }) =>
  withPath(site, id, (path) => {
    if (!path.stretches.some((s) => s.from === from)) return unknown('stretch', `${id}@${from}`);
    return from === 0 ? path : { ...path, stretches: path.stretches.filter((s) => s.from !== from) };
  });

function withPath(site: Site, id: string, change: (path: Path) => Path): Site {
  return { ...site, paths: changeById(site.paths, id, 'path', change) };
}
