import { type SeenStretch, SHORTEST_STRETCH_M } from './coverage';
import type { DerivedPath } from './derivePaths';

/** A piece of a path between two stations (m, ascending) and the runs that saw all of it: none, one or several, in the order of the site. */
export type LookedStretch = { readonly from: number; readonly to: number; readonly runs: readonly string[] };

/** By path that is in the ground: its whole length, cut where what was seen begins and ends. */
export function lookedAtPaths(
  paths: ReadonlyMap<string, DerivedPath>,
  coverage: readonly SeenStretch[],
): ReadonlyMap<string, readonly LookedStretch[]> {
  const looked = new Map<string, readonly LookedStretch[]>();
  for (const [id, { path, length }] of paths) {
    if (path.state === 'proposed') continue;
    looked.set(
      id,
      lookedAt(
        length,
        coverage.filter((s) => s.path === id),
      ),
    );
  }
  return looked;
}

function lookedAt(length: number, seen: readonly SeenStretch[]): readonly LookedStretch[] {
  const cuts = cutsOf(length, seen);
  return cuts.map((to, i) => {
    const from = cuts[i - 1] ?? 0;
    const middle = (from + to) / 2;
    return { from, to, runs: seen.filter((s) => s.from < middle && middle < s.to).map((s) => s.run) };
  });
}

/** Where the pieces end, ascending; the last is the end of the path. Cuts closer than rounding are one. */
function cutsOf(length: number, seen: readonly SeenStretch[]): readonly number[] {
  const cuts: number[] = [];
  let before = 0;
  for (const station of seen.flatMap((s) => [s.from, s.to]).sort((a, b) => a - b)) {
    if (station - before < SHORTEST_STRETCH_M || length - station < SHORTEST_STRETCH_M) continue;
    cuts.push(station);
    before = station;
  }
  return [...cuts, length];
}
