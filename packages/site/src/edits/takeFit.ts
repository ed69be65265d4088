import { entryLegOf } from '../derive/readingAlong';
import { standingFit } from '../derive/standingFit';
import type { TakenFit } from '../document/fit';
import type { Path, PathVertex } from '../document/path';
import type { Site } from '../document/site';
import { countedFrom } from '../document/spot';
import { isEvidence } from '../fit/observationTag';
import type { FittedPath, RunsFit } from '../fit/runsFit';
import type { Edit } from './edit';
import type { Places } from './holdPlaces';
import { releaseFrom } from './vertexEdits';

/** A point that the fit moved by less (m) stays as it was measured. */
const LEAST_MOVE_M = 0.001;

/**
 * Takes a fit: the lines lie as it puts them, its runs count as it counts them, and what it rests on is kept with the lines as they were
 * drawn. Points that hang on the lines move with them. `places`: where the points are, by `of/at`.
 */
export const takeFit: Edit<{ fit: RunsFit; places: Places }> = (site, { fit, places }) => {
  const before = new Map(standingFit(site)?.paths.map((p) => [p.id, p.drawn]));
  const fitted = new Map(fit.paths.map((p) => [p.id, p]));
  const paths = site.paths.map((path): { path: Path; drawn: PathVertex[] | null } => {
    const lies = fitted.get(path.id);
    if (lies === undefined) return { path, drawn: null };
    const drawn = before.get(path.id) ?? path.vertices;
    return { path: { ...path, vertices: fittedVertices(path, drawn, lies, new Set(fitted.keys())) }, drawn };
  });
  const taken: TakenFit = {
    paths: paths.flatMap(({ path, drawn }) =>
      drawn === null ? [] : [{ id: path.id, drawn: [...drawn], fitted: path.vertices }],
    ),
    runs: fit.runs.flatMap(({ id, scale, zero, entryLeg }) => {
      const run = site.runs.find((r) => r.id === id);
      return run === undefined
        ? []
        : [
            {
              id,
              from: { scale: run.scale, zero: run.zero },
              scale: scale.fitted,
              zero: zero.fitted,
              entryLeg: run.zero.at === 'rim' ? entryLeg.fitted : entryLegOf(run),
            },
          ];
    }),
    counters: [...fit.counters].map(([reading, counted]) => ({ reading, counted })),
    sigma0: fit.sigma0,
    dof: fit.dof,
    evidence: fit.observations
      .filter(({ tag }) => isEvidence(tag))
      .map(({ name, sigma, residual, standardized }) => ({
        observation: name,
        sigma,
        residual,
        standardized,
      })),
  };
  return {
    ...withPaths(
      site,
      paths.map((p) => p.path),
      places,
    ),
    fit: taken,
  };
};

/** Goes back to the lines as they were drawn and the runs as they were said to be; the site itself when no fit stands. */
export const dropFit: Edit<{ places: Places }> = (site, { places }) => {
  const standing = standingFit(site);
  const { fit: _, ...plain } = site;
  if (standing === null) return plain;
  const drawn = new Map(standing.paths.map((p) => [p.id, p.drawn]));
  const paths = site.paths.map((path) => {
    const vertices = drawn.get(path.id);
    if (vertices === undefined) return path;
    const facts = new Map(path.vertices.map((v) => [v.id, v]));
    return { ...path, vertices: vertices.map((v) => ({ ...(facts.get(v.id) ?? v), spot: v.spot })) };
  });
  return withPaths(plain, paths, places);
};

/** The site with other paths; what hung on points that they no longer have stays where it is. */
function withPaths(site: Site, paths: Path[], places: Places): Site {
  const kept = new Map(paths.map((p) => [p.id, new Set(p.vertices.map((v) => v.id))]));
  return releaseFrom({ ...site, paths }, (ref) => kept.get(ref.of)?.has(ref.at) === false, places);
}

/**
 * A branch's end stays on the pipe that it joins, and a point that did not move stays as it was measured, unless it is counted from one
 * that may have moved.
 */
function fittedVertices(
  path: Path,
  drawn: readonly PathVertex[],
  lies: FittedPath,
  pipes: ReadonlySet<string>,
): PathVertex[] {
  const facts = new Map(path.vertices.map((v) => [v.id, v]));
  const asDrawn = new Map(drawn.map((v) => [v.id, v]));
  const perLeg = new Map<string, number>();
  return lies.points.map(({ vertex, after, at, moved }): PathVertex => {
    const spot = { by: 'coordinates', x: at.x, y: at.y } as const;
    if (vertex === null) {
      const leg = after?.vertex ?? '';
      const number = (perLeg.get(leg) ?? 0) + 1;
      perLeg.set(leg, number);
      const id = `${leg}-${number}`;
      const { level } = facts.get(id) ?? {};
      // no fitting: the pipe bends of itself
      return { id, spot, bendRadius: 0, ...(level === undefined ? {} : { level }) };
    }
    const before = asDrawn.get(vertex);
    if (before === undefined) return { id: vertex, spot };
    const known = facts.get(vertex) ?? before;
    const joins = before.spot.by === 'at' && pipes.has(before.spot.point.of);
    const stays = joins || (moved < LEAST_MOVE_M && countedFrom(before.spot) === 0);
    return { ...known, spot: stays ? before.spot : spot };
  });
}
