import { azimuthBetween, distance, type Point } from '@footmark/geometry';
import type { PathVertex, Stretch } from '../document/path';
import { refKey } from '../document/pointOwners';
import { followsPrevious, type Spot } from '../document/spot';
import { changeById, type Edit } from './edit';

/**
 * Turns a path round, so that its vertices run the other way. Every point keeps its place and its id. What was counted from the point
 * before it, which now comes after it, is told as a bearing from that point, so that the measurement is kept. Stretches are
 * told from the new start: `length` is the path's (m).
 */
export const reversePath: Edit<{
  id: string;
  length: number;
  places: ReadonlyMap<string, { at: Point }>;
}> = (site, { id, length, places }) => ({
  ...site,
  paths: changeById(site.paths, id, 'path', (path) => ({
    ...path,
    vertices: path.vertices
      .map((v, i): PathVertex => {
        const before = path.vertices[i - 1];
        const spot = before === undefined ? null : asBearing(id, v, before, places);
        return spot === null ? v : { ...v, spot };
      })
      .toReversed(),
    stretches: turnedStretches(path.stretches, length),
  })),
});

function asBearing(
  of: string,
  v: PathVertex,
  before: PathVertex,
  places: ReadonlyMap<string, { at: Point }>,
): Spot | null {
  const [from, here] = [before, v].map(({ id }) => places.get(refKey({ of, at: id }))?.at);
  if (!followsPrevious(v.spot) || from === undefined || here === undefined) return null;
  return {
    by: 'bearing',
    from: { of, at: before.id },
    azimuth: azimuthBetween(from, here),
    distance: distance(from, here),
  };
}

/** Stretches from the other end; what begins at or past the end is left out. */
function turnedStretches(stretches: readonly Stretch[], length: number): Stretch[] {
  const ends = stretches.map((s, i) => ({ ...s, to: stretches[i + 1]?.from ?? length }));
  return ends
    .filter((s) => s.from < length)
    .toReversed()
    .map(({ to, ...stretch }, i) => ({ ...stretch, from: i === 0 ? 0 : length - Math.min(to, length) }));
}
