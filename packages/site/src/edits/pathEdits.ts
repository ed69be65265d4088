import type { KnownLength, Path, PathVertex, Stretch } from '../document/path';
import type { Site } from '../document/site';
import { changeById, type Edit, unknown } from './edit';
import { releaseSetAside } from './releaseSetAside';

/** Draws a path. */
export const addPath: Edit<{ path: Path }> = (site, { path }) => ({ ...site, paths: [...site.paths, path] });

/** Changes what is said of a path as a whole. */
export const changePath: Edit<{ id: string; facts: Partial<Pick<Path, 'name' | 'state' | 'bendRadius'>> }> = (
  site,
  { id, facts },
) => withPath(site, id, (path) => ({ ...path, ...facts }));

/** What is known of the pipe at one of its points, besides where it is. */
export type PathPointFacts = {
  readonly [Fact in 'bendRadius' | 'drop' | 'bend' | 'level']?: PathVertex[Fact] | undefined;
};

/** Changes what is known of the pipe at one of its points; undefined clears, what is left out stays. */
export const changePathVertex: Edit<{ id: string; at: string; facts: PathPointFacts }> = (
  site,
  { id, at, facts },
) =>
  withPath(site, id, (path) => ({
    ...path,
    vertices: changeById(path.vertices, at, 'point', (v): PathVertex => {
      const { bendRadius, drop, bend, level } = { ...v, ...facts };
      return {
        id: v.id,
        spot: v.spot,
        ...(bendRadius === undefined ? {} : { bendRadius }),
        ...(drop === undefined ? {} : { drop }),
        ...(bend === undefined ? {} : { bend }),
        ...(level === undefined ? {} : { level }),
      };
    }),
  }));

/** Says how long the pipe is between two of its points. A length between the same two takes the place of the earlier. */
export const setKnownLength: Edit<{ id: string; known: KnownLength }> = (site, { id, known }) =>
  releaseSetAside(
    withPath(site, id, (path) => ({
      ...path,
      knownLengths: [
        ...(path.knownLengths ?? []).filter(
          ({ from, to }) =>
            !(from === known.from && to === known.to) && !(from === known.to && to === known.from),
        ),
        known,
      ],
    })),
  );

/** Takes a known length back. */
export const removeKnownLength: Edit<{ id: string; known: string }> = (site, { id, known }) =>
  releaseSetAside(
    withPath(site, id, (path) => {
      if (!path.knownLengths?.some((l) => l.id === known)) return unknown('length', known);
      return { ...path, knownLengths: path.knownLengths.filter((l) => l.id !== known) };
    }),
  );

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
