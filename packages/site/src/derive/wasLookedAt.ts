import type { Site } from '../document/site';
import { apartSigma } from './alongSigma';
import { type SeenStretch, SHORTEST_STRETCH_M } from './coverage';
import type { DerivedPath } from './derivePaths';
import type { VisitThing } from './visitThings';

/** Where a run stopped, what it surely saw ends this many deviations before. */
const SURE_SIGMAS = 3;

/**
 * Whether the runs of a visit surely came through all of a thing's place. Near where one stopped the counters of both visits may be off
 * by more than is between them, so that the camera may not have come so far; at an entry, a junction and the end of the pipe it is where
 * it is.
 */
export function wasLookedAt(
  site: Site,
  thing: VisitThing,
  {
    paths,
    coverage,
  }: Readonly<{
    paths: ReadonlyMap<string, DerivedPath>;
    coverage: readonly SeenStretch[];
  }>,
  visit: string | null,
): boolean {
  const [first] = thing.marks;
  const length = paths.get(thing.path)?.length ?? 0;
  const sure = coverage
    .filter((s) => s.path === thing.path && s.last.run.visit === visit)
    .map((s) => {
      const unsure = first === undefined ? 0 : SURE_SIGMAS * apartSigma(site, first, s.last);
      const [atStart, atEnd] = [s.from < SHORTEST_STRETCH_M, s.to > length - SHORTEST_STRETCH_M];
      return {
        from: s.atFrom === 'stopped' && !atStart ? s.from + unsure : s.from,
        to: s.atTo === 'stopped' && !atEnd ? s.to - unsure : s.to,
      };
    })
    .sort((a, b) => a.from - b.from);
  let reached = thing.from;
  for (const { from, to } of sure) if (from <= reached + SHORTEST_STRETCH_M) reached = Math.max(reached, to);
  const seen = sure.some(
    ({ from, to }) => from <= thing.from + SHORTEST_STRETCH_M && thing.from <= to + SHORTEST_STRETCH_M,
  );
  return seen && reached >= thing.to - SHORTEST_STRETCH_M;
}
