import { alongAtFarEnd } from './farEnd';
import type { Mark } from './marks';
import { placeOnRoute } from './runRoute';
import type { Ways } from './sondePlace';

/** What the camera did at one end of what it saw: it came in there, went over from or into another pipe, or went no further. */
export type StretchEnd = 'began' | 'turned' | 'stopped';

/** A piece of a path, between two stations (m, ascending), that the camera of a run went through. */
export type SeenStretch = {
  readonly path: string;
  readonly run: string;
  readonly from: number;
  readonly to: number;
  readonly atFrom: StretchEnd;
  readonly atTo: StretchEnd;
  /** The run's furthest reading, which tells how far it saw. */
  readonly last: Mark;
};

/** Pieces shorter than this (m) are rounding. */
export const SHORTEST_STRETCH_M = 0.001;

/** What a run saw: from its entry to the far end of its furthest reading. Nothing without a reading in the pipe, nor of a proposed path. */
export function seenByRun(run: string, marks: readonly Mark[], ways: Ways): readonly SeenStretch[] {
  const route = ways.routes.get(run);
  const last = furthestOf(marks);
  if (route === undefined || last === null) return [];
  const furthest = Math.min(route.length, alongAtFarEnd(last));
  return route.legs.flatMap((leg, i) => {
    if (leg.fromAlong >= furthest || ways.paths.get(leg.path)?.path.state === 'proposed') return [];
    const whole = leg.toAlong <= furthest;
    const end = whole ? leg.toStation : (placeOnRoute(route, ways.paths, furthest)?.station ?? leg.toStation);
    if (Math.abs(end - leg.fromStation) < SHORTEST_STRETCH_M) return [];
    const cameIn = i === 0 ? 'began' : 'turned';
    const wentOn = leg.toAlong < furthest ? 'turned' : 'stopped';
    const downstream = end > leg.fromStation;
    return {
      path: leg.path,
      run,
      from: downstream ? leg.fromStation : end,
      to: downstream ? end : leg.fromStation,
      atFrom: downstream ? cameIn : wentOn,
      atTo: downstream ? wentOn : cameIn,
      last,
    };
  });
}

function furthestOf(marks: readonly Mark[]): Mark | null {
  let furthest: Mark | null = null;
  for (const mark of marks) {
    if (mark.place === null) continue;
    if (furthest === null || alongAtFarEnd(mark) > alongAtFarEnd(furthest)) furthest = mark;
  }
  return furthest;
}
