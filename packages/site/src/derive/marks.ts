import type { Point } from '@footmark/geometry';
import { refKey } from '../document/pointOwners';
import type { Reading, Run } from '../document/run';
import type { Site } from '../document/site';
import type { Ref } from '../document/spot';
import { type Clearance, nearestClearances, type ObstacleGroups } from './clearances';
import type { DerivedFeature } from './deriveFeatures';
import type { DerivedPath } from './derivePaths';
import { type Finding, finding, type Target } from './finding';
import { type OffsetPaint, tiesOfMark } from './markTies';
import { type ReadingTrace, readingsAlong } from './readingAlong';
import type { ReferenceIndex } from './references';
import { alongRouteAt, placeOnRoute, planAt, type RunRoute } from './runRoute';
import type { RunCorrection } from './standingFit';
import type { Ties } from './ties';

/** Where a reading is on the ground. */
export type MarkPlace = {
  readonly path: string;
  /** Plan metres from the path's start. */
  readonly station: number;
  readonly at: Point;
  /** Azimuth (rad) of flow in the pipe here. */
  readonly flow: number;
  readonly ties: Ties | null;
  /** Of a mark that cannot be painted where it is. */
  readonly paint: OffsetPaint | null;
  /** The nearest feature of each kind, nearest first. */
  readonly clearances: readonly Clearance[];
};

/** A reading and what it comes to. `place` is null where the reading leads nowhere; a finding says why. */
export type Mark = {
  readonly run: Run;
  readonly reading: Reading;
  /** What is painted: the run's letter and the reading's number. */
  readonly label: string;
  readonly trace: ReadingTrace;
  readonly place: MarkPlace | null;
};

/** What marks are made from, besides the run itself. */
export type MarkSetting = {
  readonly site: Site;
  readonly paths: ReadonlyMap<string, DerivedPath>;
  readonly references: ReferenceIndex;
  readonly obstacles: ObstacleGroups;
  readonly blocks: readonly DerivedFeature[];
  /** By point of the site, as `of/at`. */
  readonly points: ReadonlyMap<string, { readonly at: Point }>;
  /** By run: what the fit that stands made of it. */
  readonly corrections: ReadonlyMap<string, RunCorrection>;
};

/** The marks of one run, in the order of its readings. Without a way through the paths none has a place. */
export function marksOfRun(
  run: Run,
  route: RunRoute | null,
  setting: MarkSetting,
  findings: Finding[],
): readonly Mark[] {
  const start = startOfCount(run, route, setting, findings);
  const correction = setting.corrections.get(run.id) ?? null;
  checkSeen(run, route, setting, findings);
  return readingsAlong(run, { start, correction }, findings).map(({ reading, trace, inPipe }) => ({
    run,
    reading,
    label: `${run.letter}${reading.number}`,
    trace,
    place: inPipe && route !== null ? placeMark(run, reading, trace, route, setting, findings) : null,
  }));
}

/** What a reading saw helps only where the camera came by. */
function checkSeen({ id, readings }: Run, route: RunRoute | null, setting: MarkSetting, findings: Finding[]) {
  if (route === null) return;
  for (const { id: reading, seenAt } of readings) {
    if (seenAt !== undefined && alongOfPoint(seenAt, route, setting) === null)
      findings.push(
        finding('seen-point-not-on-run', 'warning', { kind: 'reading', run: id, id: reading }, {}),
      );
  }
}

/** Along the pipe from the entry to the place of the zero (m). */
function startOfCount(run: Run, route: RunRoute | null, setting: MarkSetting, findings: Finding[]): number {
  if (run.zero.at !== 'point' || route === null) return 0;
  const start = alongOfPoint(run.zero.point, route, setting);
  if (start === null) {
    findings.push(finding('zero-point-not-on-run', 'error', { kind: 'run', id: run.id }, {}));
    return 0;
  }
  return start;
}

/** Along the pipe from the entry to a point of the plan (m); null when that is not on the way. */
function alongOfPoint(ref: Ref, route: RunRoute, { points, paths, site }: MarkSetting): number | null {
  const point = points.get(refKey(ref))?.at;
  return point === undefined ? null : alongRouteAt(route, paths, point, site.entryReach);
}

function placeMark(
  run: Run,
  reading: Reading,
  trace: ReadingTrace,
  route: RunRoute,
  setting: MarkSetting,
  findings: Finding[],
): MarkPlace | null {
  const target: Target = { kind: 'reading', run: run.id, id: reading.id };
  const place = placeOnRoute(route, setting.paths, trace.along);
  const plan = place === null ? null : planAt(setting.paths, place);
  if (place === null || plan === null) {
    const last = setting.paths.get(route.legs.at(-1)?.path ?? '');
    const past = { beyond: trace.along - route.length, length: route.length };
    const path = last?.path.name || last?.path.id || '';
    findings.push(
      route.cutShort
        ? finding('reading-off-known-way', 'error', target, past)
        : finding('reading-past-end', 'error', target, { ...past, path }),
    );
    return null;
  }
  if (place.inDrop) findings.push(finding('reading-in-drop', 'note', target, {}));
  const around = { references: setting.references, blocks: setting.blocks, tape: setting.site.tape };
  const { ties, paint } = tiesOfMark(plan.point, reading, around, target, findings);
  return {
    path: place.path,
    station: place.station,
    at: plan.point,
    flow: plan.azimuth,
    ties,
    paint,
    clearances: nearestClearances(plan.point, setting.obstacles),
  };
}
