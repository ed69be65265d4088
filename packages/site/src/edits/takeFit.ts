import { entryLegOf } from '../derive/readingAlong';
import { siteAsDrawn, standingFit } from '../derive/standingFit';
import type { TakenFit } from '../document/fit';
import type { Path, PathVertex } from '../document/path';
import type { Site } from '../document/site';
import { countedFrom, type Spot } from '../document/spot';
import { isEvidence } from '../fit/observationTag';
import type { FittedPath, RunsFit } from '../fit/runsFit';
import type { Edit } from './edit';
import type { Places } from './holdPlaces';
import { releaseSetAside } from './releaseSetAside';
import { releaseFrom } from './vertexEdits';

/** A point that the fit moved by less (m) stays as it was measured. */
const LEAST_MOVE_M = 0.001;

/** A name has at most 64 letters: this many of the vertex before it, a dash and a number. */
const LONGEST_BASE = 56;

/**
 * Takes a fit: the lines lie as it puts them, its runs count as it counts them, and what it rests on is kept with the lines as they were
 * drawn. Points that hang on the lines move with them. `places`: where the points are, by `of/at`.
 */
export const takeFit: Edit<{ fit: RunsFit; places: Places }> = (site, { fit, places }) => {
  const before = new Map(standingFit(site)?.paths.map((p) => [p.id, p]));
  const pipes = new Set(fit.paths.map((p) => p.id));
  const moved = fit.paths.flatMap((lies): readonly TakenPath[] => {
    const path = site.paths.find((p) => p.id === lies.id);
    if (path === undefined) return [];
    const { drawn = path.vertices, added = [] } = before.get(path.id) ?? {};
    const names = namesOfAdded(lies, { drawn, added });
    return [
      {
        id: path.id,
        drawn,
        fitted: fittedVertices({ path, drawn, lies, names, pipes }),
        added: lies.points.flatMap((point) => {
          const [locate] = point.added?.locates ?? [];
          const vertex = names.get(point);
          return locate === undefined || vertex === undefined ? [] : [{ vertex, locate }];
        }),
      },
    ];
  });
  const taken: TakenFit = {
    paths: moved,
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
    counters: [...fit.counters].map(([reading, count]) => ({ reading, ...count })),
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
  const fitted = new Map(moved.map((p) => [p.id, p.fitted]));
  const paths = site.paths.map((path) => {
    const vertices = fitted.get(path.id);
    return vertices === undefined ? path : { ...path, vertices };
  });
  return { ...withPaths(site, paths, places), fit: taken };
};

type TakenPath = TakenFit['paths'][number];
type LiesAt = FittedPath['points'][number];

/** Names of the new points: the one that a point at that locate has, else the vertex before it with a number that is free. */
function namesOfAdded(
  lies: FittedPath,
  { drawn, added }: Pick<TakenPath, 'drawn' | 'added'>,
): ReadonlyMap<LiesAt, string> {
  const known = new Map(added.map((a) => [a.locate, a.vertex]));
  const used = new Set([...drawn.map((v) => v.id), ...known.values()]);
  const names = new Map<LiesAt, string>();
  for (const point of lies.points) {
    if (point.added === null) continue;
    const { after, locates } = point.added;
    const before = locates.flatMap((locate) => known.get(locate) ?? []).find((name) => !given(names, name));
    const name = before ?? freeVertexName(used, after);
    used.add(name);
    names.set(point, name);
  }
  return names;
}

function given(names: ReadonlyMap<LiesAt, string>, name: string): boolean {
  return [...names.values()].includes(name);
}

/** The first of b-1, b-2 … behind the vertex b that is free. */
function freeVertexName(used: ReadonlySet<string>, after: string): string {
  const base = after.slice(0, LONGEST_BASE);
  for (let n = 1; ; n++) if (!used.has(`${base}-${n}`)) return `${base}-${n}`;
}

/** Goes back to the lines as they were drawn and the runs as they were said to be; the site itself when no fit stands. */
export const dropFit: Edit<{ places: Places }> = (site, { places }) => {
  const { paths } = siteAsDrawn(site);
  const { fit: _, ...plain } = site;
  return paths === site.paths ? plain : withPaths(plain, paths, places);
};

/** The site with other paths; what hung on points that they no longer have stays where it is, and nothing is set aside of those. */
function withPaths(site: Site, paths: Path[], places: Places): Site {
  const kept = new Map(paths.map((p) => [p.id, new Set(p.vertices.map((v) => v.id))]));
  const freed = releaseFrom({ ...site, paths }, (ref) => kept.get(ref.of)?.has(ref.at) === false, places);
  return releaseSetAside(freed);
}

/**
 * A branch's end stays on the pipe that it joins, and a point that did not move stays as it was measured, unless it is counted from one
 * that may have moved. The others keep what they were worth before the evidence: that weighs them anew once the fit no longer stands.
 */
function fittedVertices({
  path,
  drawn,
  lies,
  names,
  pipes,
}: {
  readonly path: Path;
  readonly drawn: readonly PathVertex[];
  readonly lies: FittedPath;
  readonly names: ReadonlyMap<LiesAt, string>;
  readonly pipes: ReadonlySet<string>;
}): PathVertex[] {
  const facts = new Map(path.vertices.map((v) => [v.id, v]));
  const asDrawn = new Map(drawn.map((v) => [v.id, v]));
  return lies.points.map((point): PathVertex => {
    const { vertex, at, measured, sigma, moved } = point;
    const spot: Spot = measured
      ? { by: 'coordinates', x: at.x, y: at.y, sigma }
      : { by: 'finger', x: at.x, y: at.y };
    if (vertex === null) {
      const id = names.get(point) ?? '';
      // no fitting: the pipe bends of itself
      return { bendRadius: 0, ...facts.get(id), id, spot };
    }
    const before = asDrawn.get(vertex);
    if (before === undefined) return { id: vertex, spot };
    const known = facts.get(vertex) ?? before;
    const joins = before.spot.by === 'at' && pipes.has(before.spot.point.of);
    const stays = joins || (moved < LEAST_MOVE_M && countedFrom(before.spot) === 0);
    return { ...known, spot: stays ? before.spot : spot };
  });
}
