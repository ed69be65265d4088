import type { Adjustment, Solved } from '@footmark/adjust';
import { distance, type Point, subtract } from '@footmark/geometry';
import { type Derived, derive } from '../derive/derive';
import { pipeSizeAt } from '../derive/profileSoundings';
import { siteAsDrawn, standingFit } from '../derive/standingFit';
import type { Site } from '../document/site';
import { blunderGroups } from './blunderGroups';
import { fittedPaths, furthestMove } from './fittedPaths';
import type { Net } from './net';
import { observationName } from './observationTag';
import { netReading } from './readingPlace';
import type { FitObservation, FitStatus, FittedMark, FittedRun, RunsFit } from './runsFit';
import { sigmaAsDrawn } from './sigmaAsDrawn';
import { hasEvidence, isSolved, type SolvedRuns, solveAsDrawn, solveWithEvidence } from './solveRuns';
import type { Tagged } from './tagged';
import { tagOfName } from './tagOfName';
import { markSpread, zoneOf } from './zones';

export type FitOptions = {
  /** Asked now and then; true gives the fit up, and null comes back. */
  readonly shouldStop?: () => boolean;
};

/** A fit within this (m) of what is shown is the same: nothing would move that paint shows. */
const SAME_M = 0.025;

/**
 * Weighs all that is known of a site's runs and pipes: how the lines were drawn, the counters with their zeros and scales, and against them
 * what was located, seen from both ends, or known otherwise. Gives the place of every mark as the evidence has it, and the
 * 95 % zone of every mark as it is shown: before a fit is taken that is the drawing with what a drawing is worth, after it the fit.
 * `derived` is that of `site`. Null only when `shouldStop` said so. Source of the mathematics: `@footmark/adjust`.
 */
export function fitRuns(site: Site, derived: Derived, { shouldStop }: FitOptions = {}): RunsFit | null {
  const taken = standingFit(site) !== null;
  const drawnSite = taken ? siteAsDrawn(site) : site;
  const drawn = taken ? derive(withoutFit(drawnSite)) : derived;
  const asDrawn = solveAsDrawn(drawnSite, drawn, shouldStop);
  const weighed = asDrawn === null ? null : solveWithEvidence(drawnSite, drawn, shouldStop);
  if (asDrawn === null || weighed === null) return null;
  const { net, list, everything, result } = weighed;
  const checked = hasEvidence(weighed);

  const status = statusOf(result, checked);
  const solved = isSolved(result) ? result : null;
  const good = solved !== null && status === 'fitted' ? solved : null;
  const paths = good === null ? [] : fittedPaths(net, good.estimates, sigmaAsDrawn(asDrawn));
  const marks = new Map<string, FittedMark>();
  let pending = good === null ? 0 : furthestMove(paths, derived);
  for (const {
    reading: { id },
    place: shown,
  } of derived.marks) {
    const reading = netReading(net, id);
    if (shown === null || reading === null) continue;
    const diameter = outsideAt(derived, shown.path, shown.station);
    const after = good === null ? null : markSpread(net, good, tagsOf(list), reading);
    const off = after === null ? 0 : distance(after.at, shown.at);
    if (good !== null) pending = Math.max(pending, off);
    const basis = taken && after !== null ? after : (spreadAsDrawn(asDrawn, id) ?? after);
    if (basis === null) continue;
    marks.set(id, {
      zone: zoneOf(basis, subtract(shown.at, basis.at), diameter),
      fitted: after === null ? null : { at: after.at, off, zone: zoneOf(after, NOWHERE, diameter) },
    });
  }
  return {
    status,
    loose: result.status === 'singular' ? looseNames(everything, result.undetermined) : [],
    marks,
    observations: observationsOf(list, solved),
    aside: site.setAside.flatMap((name) => tagOfName(site, name) ?? []),
    blunders: solved === null ? [] : blunderGroups(solved, list),
    runs: good === null ? [] : fittedRuns(net, good),
    paths,
    sigma0: solved?.sigma0 ?? null,
    dof: solved?.dof ?? 0,
    test:
      solved?.globalTest == null || !checked
        ? null
        : {
            statistic: solved.globalTest.statistic,
            upper: solved.globalTest.upper,
            passed: solved.globalTest.statistic <= solved.globalTest.upper,
          },
    iterations: result.iterations,
    counters: new Map(
      good === null
        ? []
        : [...net.counters].map(([id, at]) => [
            id,
            { read: net.start[at] ?? 0, counted: good.estimates[at] ?? 0 },
          ]),
    ),
    taken,
    pending: pending > SAME_M ? pending : 0,
  };
}

const NOWHERE: Point = { x: 0, y: 0 };

function withoutFit(site: Site): Site {
  const { fit: _, ...plain } = site;
  return plain;
}

function tagsOf(list: readonly Tagged[]) {
  return list.map((t) => t.tag);
}

function spreadAsDrawn({ net, list, result }: SolvedRuns, id: string) {
  const reading = netReading(net, id);
  return reading === null || !isSolved(result) ? null : markSpread(net, result, tagsOf(list), reading);
}

function statusOf(fit: Adjustment, checked: boolean): FitStatus {
  if (fit.status === 'singular') return 'undetermined';
  if (fit.status === 'not-converged') return 'not-converged';
  return checked ? 'fitted' : 'no-evidence';
}

/** Names of the observations that touch an unknown which nothing holds. */
function looseNames(list: readonly Tagged[], undetermined: readonly number[]): readonly string[] {
  const loose = new Set(undetermined);
  const touches = ({ observation: o }: Tagged): boolean => {
    if (o.kind === 'coordinate') return loose.has(o.unknown);
    return false;
  };
  return [...new Set(list.filter(touches).map(({ tag }) => observationName(tag)))];
}

function observationsOf(list: readonly Tagged[], solved: Solved | null): readonly FitObservation[] {
  return list.map(({ tag, observation }, i) => ({
    tag,
    name: observationName(tag),
    observed: observation.value,
    sigma: observation.sigma,
    residual: solved?.residuals[i] ?? 0,
    standardized: solved?.standardizedResiduals[i] ?? 0,
    redundancy: solved?.redundancyNumbers[i] ?? 0,
  }));
}

function fittedRuns(net: Net, solved: Solved): readonly FittedRun[] {
  return [...net.runs.values()].map(({ run, scale, zero, entryLeg }) => {
    const value = (unknown: number) => ({
      said: net.start[unknown] ?? 0,
      fitted: solved.estimates[unknown] ?? 0,
      sigma: Math.sqrt(solved.covarianceOf(unknown, unknown)),
    });
    return {
      id: run.id,
      scale: value(scale),
      zero: value(zero),
      entryLeg: entryLeg === null ? { said: 0, fitted: 0, sigma: 0 } : value(entryLeg),
    };
  });
}

/** The outside diameter (m) of a pipe at a station: what a hole has to hold. */
function outsideAt(derived: Derived, path: string, station: number): number {
  const { diameter, wall } = pipeSizeAt(derived.paths.get(path)?.path.stretches ?? [], station);
  return diameter + 2 * wall;
}
