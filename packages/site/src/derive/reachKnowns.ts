import type { Point } from '@footmark/geometry';
import { refKey } from '../document/pointOwners';
import type { Site } from '../document/site';
import type { Ref } from '../document/spot';
import { sigmaOf } from '../rules/sigmaOf';
import { alongSigma } from './alongSigma';
import type { DerivedFeature } from './deriveFeatures';
import type { Mark } from './marks';
import type { ResolvedPoint } from './resolvePoints';

/** A point of the plan from which so much cable leads to what a reading saw. Metres. */
export type ReachKnown = {
  readonly mark: Mark;
  /** Where the camera went in, or where the counter was zeroed in the pipe. */
  readonly point: Ref;
  readonly at: Point;
  readonly cable: number;
  /** What cable and point may be off by: three standard deviations. */
  readonly slack: number;
};

/** What may be is three standard deviations off. */
const SLACK_SIGMAS = 3;

/** What known points are looked up in. `marks` by reading id. */
export type KnownSetting = {
  readonly site: Site;
  readonly points: ReadonlyMap<string, ResolvedPoint>;
  readonly features: ReadonlyMap<string, DerivedFeature>;
  readonly marks: ReadonlyMap<string, Mark>;
};

/** The known points of readings of one thing: the first reading's own, then those of the others that saw it too. */
export function reachKnowns(
  setting: KnownSetting,
  readings: readonly string[],
  sigmaOfPoint: (ref: Ref) => number,
): readonly ReachKnown[] {
  const { site } = setting;
  return readings.flatMap((reading, i) => {
    const known = knownOf(setting, reading);
    if (known === null) return [];
    const look = i === 0 ? 0 : sigmaOf(site, 'sameThing');
    const sigma = Math.hypot(alongSigma(site, known.mark), sigmaOfPoint(known.point), look);
    return { ...known, slack: SLACK_SIGMAS * sigma };
  });
}

/** A reading's known point and the cable from it; null without one, and for a reading that is not in the pipe. */
export function knownOf(
  { points, features, marks }: KnownSetting,
  reading: string,
): Omit<ReachKnown, 'slack'> | null {
  const mark = marks.get(reading);
  if (mark === undefined) return null;
  const { run, trace } = mark;
  const entry = features.get(run.entry ?? '')?.feature;
  const vertex = entry?.vertices[0];
  const atEntry = entry === undefined || vertex === undefined ? null : { of: entry.id, at: vertex.id };
  const point = run.zero.at === 'point' ? run.zero.point : atEntry;
  const at = point === null ? undefined : points.get(refKey(point))?.at;
  const inPipe = trace.along >= 0 && (run.zero.at === 'point' || trace.cable >= 0);
  if (point === null || at === undefined || !inPipe) return null;
  // what is short of the point is as far from it as what is past it
  const cable = Math.abs(trace.along - trace.start);
  return { mark, point, at, cable };
}
