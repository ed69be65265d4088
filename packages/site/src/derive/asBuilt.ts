import {
  COINCIDENT_M,
  distance,
  type Point,
  pathLength,
  stationOf,
  stationOfVertex,
} from '@footmark/geometry';
import type { PathVertex } from '../document/path';
import type { Site } from '../document/site';
import type { Spot } from '../document/spot';
import { freeVertexId } from '../edits/vertexEdits';
import type { Derived } from './derive';
import type { DerivedPath } from './derivePaths';
import { type FoundPlace, latestFinds } from './foundPlaces';
import { foundSpot } from './foundSpot';

/** A point of a pipe as it was built: `found` by that record, or null where nobody has seen it and it lies as it was drawn. */
export type AsBuiltPoint = { readonly vertex: PathVertex; readonly found: string | null };

/** A find nearer (m) along the pipe to one of its points than this is that point. */
const SAME_POINT_M = 0.3;

/** A find further (m) off a pipe than this, which was looked for on none, is nothing of it. */
const BESIDE_PIPE_M = 1;

type Entry = AsBuiltPoint & { readonly station: number; readonly at: Point };

/**
 * A pipe through where it was found (`also`: by finds of no mark that somebody says are of it, by their ids), in the order of its stations, with the depths that were found; between and beyond them as it was
 * drawn, by eye. Its ends stay on what they were drawn at: a cleanout, a tap, another pipe.
 */
export function asBuiltPoints(
  site: Site,
  derived: Derived,
  on: DerivedPath,
  also: readonly string[] = [],
): readonly AsBuiltPoint[] {
  const planned = on.path.state === 'proposed';
  const entries: Entry[] = on.path.vertices.map((vertex, i) => ({
    vertex: assumed(vertex, on.points[i] ?? { x: 0, y: 0 }, planned),
    found: null,
    station: stationOfVertex(on.line, i),
    at: on.points[i] ?? { x: 0, y: 0 },
  }));
  for (const find of findsOn(derived, on, also)) addFind(entries, find, on, spotOf(site, derived, find));
  return entries.map(({ vertex, found }) => ({ vertex, found }));
}

/** The finds that tell where a pipe lies: of its marks and set-out points, and of those of no mark the ones that are said to. */
export function findsOn(
  { found }: Pick<Derived, 'found'>,
  { path }: DerivedPath,
  also: readonly string[] = [],
): readonly FoundPlace[] {
  return latestFinds(found).filter(({ record, sought }) =>
    record.about.is === 'place' ? also.includes(record.id) : sought?.path === path.id,
  );
}

/** Finds of no mark that lie by a pipe: of it, or of something else there, which nobody but people can tell. */
export function findsBeside({ found }: Pick<Derived, 'found'>, { line }: DerivedPath): readonly FoundPlace[] {
  return latestFinds(found).filter(
    ({ record, at }) =>
      record.about.is === 'place' && at !== null && stationOf(line, at).distance <= BESIDE_PIPE_M,
  );
}

function addFind(
  entries: Entry[],
  { record, at }: FoundPlace,
  { path, line }: DerivedPath,
  spot: Spot | null,
): void {
  if (at === null || spot === null) return;
  const station = Math.min(pathLength(line), Math.max(0, stationOf(line, at).station));
  // two finds in one place would leave a leg without length
  if (entries.some((e) => e.found !== null && distance(e.at, at) < Math.max(COINCIDENT_M, 0.05))) return;
  const level: Pick<PathVertex, 'level'> =
    record.depth === undefined
      ? {}
      : { level: { is: `depth-to-${record.depth.to}` as const, depth: record.depth.depth } };
  const near = entries
    .filter((e) => e.found === null && Math.abs(e.station - station) <= SAME_POINT_M)
    .sort((a, b) => Math.abs(a.station - station) - Math.abs(b.station - station))[0];
  if (near !== undefined) {
    const { vertex } = near;
    const joins = vertex.spot.by === 'at' && vertex.spot.point.of !== path.id;
    entries[entries.indexOf(near)] = {
      ...near,
      vertex: { ...vertex, ...(joins ? {} : { spot }), ...level },
      found: record.id,
      at: joins ? near.at : at,
    };
    return;
  }
  const id = freeVertexId(entries.map((e) => e.vertex));
  const index = entries.findIndex((e) => e.station > station);
  const entry = { vertex: { id, spot, ...level }, found: record.id, station, at };
  entries.splice(index < 0 ? entries.length : index, 0, entry);
}

/** How a find was measured; off its paint it hangs on what the paint was taped from. */
function spotOf(site: Site, { points }: Derived, { record, at }: FoundPlace): Spot | null {
  const { where, given } = record;
  if (where?.by === 'tapes' || where?.by === 'coordinates') return where;
  return at === null ? null : foundSpot(site, points, given, at);
}

/** A point that nobody has seen: by eye, where it was drawn, unless it was drawn at a thing. What was planned of its depth is not known. */
function assumed(vertex: PathVertex, { x, y }: Point, planned: boolean): PathVertex {
  const { level, ...rest } = vertex;
  const spot: Spot = vertex.spot.by === 'at' ? vertex.spot : { by: 'finger', x, y };
  return { ...rest, spot, ...(planned || level === undefined ? {} : { level }) };
}
