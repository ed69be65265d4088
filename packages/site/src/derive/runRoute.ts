import {
  developedAt,
  distance,
  locate,
  type Point,
  stationAtDeveloped,
  stationOf,
  stationOfVertex,
} from '@footmark/geometry';
import type { Run } from '../document/run';
import type { DerivedFeature } from './deriveFeatures';
import type { DerivedPath } from './derivePaths';
import { type Finding, finding } from './finding';

/** One piece of a run's way: along `path` from a station to a station, falling when the camera goes against the flow. */
export type RouteLeg = {
  readonly path: string;
  readonly fromStation: number;
  readonly toStation: number;
  /** Cable length (m) from the entry at which this leg begins and ends. */
  readonly fromAlong: number;
  readonly toAlong: number;
};

/** The way of a run through the tree of paths, from its entry to the furthest place that it can reach. */
export type RunRoute = {
  readonly legs: readonly RouteLeg[];
  readonly entryStation: number;
  readonly length: number;
  /** The way goes on from here, but where to is not known: the run's branches make no sense from here on. */
  readonly cutShort: boolean;
};

/** A place on a run's way. `inDrop`: within a vertical drop, where the plan stands still. */
export type RoutePlace = { readonly path: string; readonly station: number; readonly inDrop: boolean };

/** Below this (m) the entry stands on the path; above it and within the site's reach, beside it. */
const ENTRY_ON_PATH_M = 0.05;

/** Finds the way of a run, or says in findings why there is none. */
export function runRoute(
  run: Run,
  paths: ReadonlyMap<string, DerivedPath>,
  features: ReadonlyMap<string, DerivedFeature>,
  entryReach: number,
  findings: Finding[],
): RunRoute | null {
  const at = { kind: 'run', id: run.id } as const;
  if (run.entry === null) {
    findings.push(finding('run-has-no-entry', 'error', at, {}));
    return null;
  }
  if (run.path === null) {
    findings.push(finding('run-has-no-path', 'error', at, {}));
    return null;
  }
  const first = paths.get(run.path);
  if (first === undefined) {
    findings.push(finding('path-cannot-be-computed', 'error', at, { path: run.path }));
    return null;
  }
  const entryStation = stationOfEntry(run, first, features, entryReach, findings);
  if (entryStation === null) return null;
  return run.direction === 'with-flow'
    ? routeWithFlow(first, entryStation, paths)
    : routeAgainstFlow(run, first, entryStation, paths, findings);
}

/** The station at which the entry feature stands on its path: a vertex tied to it, or the nearest place within reach. */
function stationOfEntry(
  run: Run,
  on: DerivedPath,
  features: ReadonlyMap<string, DerivedFeature>,
  reach: number,
  findings: Finding[],
): number | null {
  const entry = features.get(run.entry ?? '');
  const place = entry?.points[0];
  const at = { kind: 'run', id: run.id } as const;
  if (entry === undefined || place === undefined) {
    findings.push(finding('run-has-no-entry', 'error', at, {}));
    return null;
  }
  const tied = tiedStation(on, entry.feature.id);
  if (tied !== null) return tied;
  const nearest = stationOf(on.line, place);
  const names = {
    entry: entry.feature.name || entry.feature.id,
    path: on.path.name || on.path.id,
    distance: nearest.distance,
  };
  if (nearest.distance > reach) {
    findings.push(finding('entry-not-on-path', 'error', at, { ...names, reach }));
    return null;
  }
  if (nearest.distance > ENTRY_ON_PATH_M) {
    findings.push(finding('entry-beside-path', 'note', at, names));
  }
  return nearest.station;
}

/**
 * Station of the vertex that is said, or was said before a fit moved it, to be at a feature, null without one. At a bend that is the
 * middle of its arc.
 */
function tiedStation(on: DerivedPath, feature: string): number | null {
  const tied = on.tiedTo.indexOf(feature);
  return tied < 0 ? null : stationOfVertex(on.line, tied);
}

function routeWithFlow(
  first: DerivedPath,
  entryStation: number,
  paths: ReadonlyMap<string, DerivedPath>,
): RunRoute {
  const legs: RouteLeg[] = [];
  let along = 0;
  let current: DerivedPath | undefined = first;
  let from = entryStation;
  const visited = new Set<string>();
  while (current !== undefined && !visited.has(current.path.id)) {
    visited.add(current.path.id);
    const leg = routeLeg(current, from, current.length, along);
    legs.push(leg);
    along = leg.toAlong;
    from = current.joins?.station ?? 0;
    current = current.joins === null ? undefined : paths.get(current.joins.path);
  }
  return { legs, entryStation, length: along, cutShort: false };
}

function routeAgainstFlow(
  run: Run,
  first: DerivedPath,
  entryStation: number,
  paths: ReadonlyMap<string, DerivedPath>,
  findings: Finding[],
): RunRoute {
  const legs: RouteLeg[] = [];
  let along = 0;
  let current = first;
  let from = entryStation;
  for (const branchId of run.branches) {
    const branch = paths.get(branchId);
    if (branch === undefined || branch.joins?.path !== current.path.id || branch.joins.station > from) {
      const name = branch === undefined ? branchId : branch.path.name || branchId;
      findings.push(finding('branch-not-on-run', 'error', { kind: 'run', id: run.id }, { branch: name }));
      const known = routeLeg(current, from, from, along); // no further: nobody knows where it left this pipe
      return { legs: [...legs, known], entryStation, length: along, cutShort: true };
    }
    const leg = routeLeg(current, from, branch.joins.station, along);
    legs.push(leg);
    along = leg.toAlong;
    current = branch;
    from = branch.length;
  }
  const last = routeLeg(current, from, 0, along, from > 0 ? 'before' : 'after'); // up the drop at the head, if any
  legs.push(last);
  return { legs, entryStation, length: last.toAlong, cutShort: false };
}

/** `side` tells whether the leg ends below a drop at its end (`after` it in the flow) or above. */
function routeLeg(
  on: DerivedPath,
  fromStation: number,
  toStation: number,
  fromAlong: number,
  side: 'before' | 'after' = 'after',
): RouteLeg {
  const cable = Math.abs(
    developedAt(on.profile, toStation, side) - developedAt(on.profile, fromStation, 'after'),
  );
  return { path: on.path.id, fromStation, toStation, fromAlong, toAlong: fromAlong + cable };
}

/** Cable lengths this far (m) past the end still count as the end: rounding of sums, not a reading. */
const END_ROUNDING_M = 1e-6;

/** Where `along` metres of cable from the entry lead to, or null past the end of the way. `along` is at least 0. */
export function placeOnRoute(
  route: RunRoute,
  paths: ReadonlyMap<string, DerivedPath>,
  along: number,
): RoutePlace | null {
  const leg = route.legs.find((l) => along <= l.toAlong) ?? route.legs.at(-1);
  if (leg === undefined || along > leg.toAlong + END_ROUNDING_M) return null;
  const on = paths.get(leg.path);
  if (on === undefined) return null;
  const start = developedAt(on.profile, leg.fromStation, 'after');
  const gone = Math.min(along, leg.toAlong) - leg.fromAlong;
  const developed = leg.toStation >= leg.fromStation ? start + gone : start - gone;
  const found = stationAtDeveloped(on.profile, developed);
  return { path: leg.path, station: found.station, inDrop: found.inDrop };
}

/** The plan position and the pipe's direction of flow (azimuth) at a place. */
export function planAt(paths: ReadonlyMap<string, DerivedPath>, place: RoutePlace) {
  const on = paths.get(place.path);
  return on === undefined ? null : locate(on.line, place.station);
}

/** Cable (m) from the entry to the place of a run's way that is nearest to a point; null when that is further off than `reach` (m). */
export function alongRouteAt(
  route: RunRoute,
  paths: ReadonlyMap<string, DerivedPath>,
  point: Point,
  reach: number,
): number | null {
  let nearest: { away: number; along: number } | null = null;
  for (const leg of route.legs) {
    const on = paths.get(leg.path);
    if (on === undefined) continue;
    const [low, high] = [leg.fromStation, leg.toStation].sort((a, b) => a - b) as [number, number];
    const station = Math.min(high, Math.max(low, stationOf(on.line, point).station));
    const away = distance(locate(on.line, station).point, point);
    if (away > reach || (nearest !== null && nearest.away <= away)) continue;
    const start = developedAt(on.profile, leg.fromStation, 'after');
    nearest = { away, along: leg.fromAlong + Math.abs(developedAt(on.profile, station, 'after') - start) };
  }
  return nearest?.along ?? null;
}
