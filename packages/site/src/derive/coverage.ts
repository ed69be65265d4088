import type { DerivedPath } from './derivePaths';
import type { Mark } from './marks';
import type { RunRoute } from './runRoute';
import { placeOnRoute } from './runRoute';

/** A piece of a path, between two stations (m, ascending), that the camera of a run went through. */
export type SeenStretch = {
  readonly path: string;
  readonly run: string;
  readonly from: number;
  readonly to: number;
};

/** What a run saw: from its entry to its furthest reading. Nothing when it has no reading in the pipe. */
export function seenByRun(
  run: string,
  route: RunRoute,
  marks: readonly Mark[],
  paths: ReadonlyMap<string, DerivedPath>,
): readonly SeenStretch[] {
  const furthest = marks.reduce((far, m) => (m.place === null ? far : Math.max(far, m.trace.along)), 0);
  if (furthest <= 0) return [];
  return route.legs.flatMap((leg) => {
    if (leg.fromAlong >= furthest) return [];
    const end =
      leg.toAlong <= furthest
        ? leg.toStation
        : (placeOnRoute(route, paths, furthest)?.station ?? leg.toStation);
    return { path: leg.path, run, from: Math.min(leg.fromStation, end), to: Math.max(leg.fromStation, end) };
  });
}
