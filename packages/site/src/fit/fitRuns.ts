import { type Adjustment, adjust, type Solved } from '@footmark/adjust';
import { distance, type Point, subtract } from '@footmark/geometry';
import { type Derived, derive } from '../derive/derive';
import { siteAsDrawn, standingFit } from '../derive/standingFit';
import type { Site } from '../document/site';
import { blunderGroups } from './blunderGroups';
import { evidence } from './evidence/evidence';
import { fittedPaths, furthestMove } from './fittedPaths';
import { guesses } from './guesses/guesses';
import { type Net, netOf } from './net';
import { isEvidence, observationName } from './observationTag';
import { netReading } from './readingPlace';
import type { FitObservation, FitStatus, FittedMark, FittedRun, RunsFit } from './runsFit';
import type { Tagged } from './tagged';
import { markSpread, zoneOf } from './zones';

export type FitOptions = {
  /** Asked now and then; true gives the fit up, and null comes back. */
  readonly shouldStop?: () => boolean;
};

/** A fit within this (m) of what is shown is the same: nothing would move that paint shows. */
const SAME_M = 0.01;

/**
 * Weighs all that is known of a site's runs and pipes: how the lines were drawn, the counters with their zeros and scales, and against them
 * what was located, seen from both ends, or known otherwise. Gives the place of every mark as the evidence has it, and the
 * 95 % zone of every mark as it is shown: before a fit is taken that is the drawing with what a drawing is worth, after it the fit.
 * `derived` is that of `site`. Null only when `shouldStop` said so. Source of the mathematics: `@footmark/adjust`.
 */
export function fitRuns(site: Site, derived: Derived, options: FitOptions = {}): RunsFit | null {
  const taken = standingFit(site) !== null;
  const drawnSite = taken ? siteAsDrawn({ ...site }) : site;
  const drawn = taken ? derive(withoutFit(drawnSite)) : derived;
  const { evidenced, located, aside } = whatHangsOnReadings(site, drawn);
  const net = netOf(drawnSite, drawn, evidenced, located);
  const everything = [...evidence(net), ...guesses(net)];
  const all = everything.filter(({ tag }) => !aside.has(observationName(tag)));
  const prior = all.filter(({ tag }) => !isEvidence(tag));
  const hasEvidence = prior.length < all.length;

  const asDrawn = solve(net, prior, options);
  const fit = hasEvidence ? solve(net, all, options) : asDrawn;
  if (asDrawn === null || fit === null) return null;

  const status = statusOf(fit, hasEvidence);
  const solved = isSolved(fit) ? fit : null;
  const good = solved !== null && status === 'fitted' ? solved : null;
  const paths = good === null ? [] : fittedPaths(net, good.estimates);
  const marks = new Map<string, FittedMark>();
  let pending = good === null ? 0 : furthestMove(paths, derived);
  for (const [id] of net.marks) {
    const shown = derived.marks.find((m) => m.reading.id === id)?.place ?? null;
    const reading = netReading(net, id);
    if (shown === null || reading === null) continue;
    const diameter = diameterAt(derived, shown.path, shown.station);
    const after = good === null ? null : markSpread(net, good, tagsOf(all), reading);
    const before = isSolved(asDrawn) ? markSpread(net, asDrawn, tagsOf(prior), reading) : null;
    const off = after === null ? 0 : distance(after.at, shown.at);
    if (good !== null && taken) pending = Math.max(pending, off);
    const basis = taken && after !== null ? after : (before ?? after);
    if (basis === null) continue;
    const shift: Point = taken && after !== null && off > SAME_M ? subtract(shown.at, after.at) : NOWHERE;
    marks.set(id, {
      zone: zoneOf(basis, shift, diameter),
      fitted:
        after === null || !hasEvidence ? null : { at: after.at, off, zone: zoneOf(after, NOWHERE, diameter) },
    });
  }
  return {
    status,
    loose: solved === null && fit.status === 'singular' ? looseNames(all, fit.undetermined) : [],
    marks,
    observations: observationsOf(all, solved),
    aside: [
      ...new Map(
        everything
          .filter(({ tag }) => aside.has(observationName(tag)))
          .map(({ tag }) => [observationName(tag), tag]),
      ).values(),
    ],
    blunders: solved === null ? [] : blunderGroups(solved, all),
    runs: good === null ? [] : fittedRuns(net, good),
    paths,
    sigma0: solved?.sigma0 ?? null,
    dof: solved?.dof ?? 0,
    test:
      solved?.globalTest == null || !hasEvidence
        ? null
        : {
            statistic: solved.globalTest.statistic,
            upper: solved.globalTest.upper,
            passed: solved.globalTest.statistic <= solved.globalTest.upper,
          },
    iterations: fit.iterations,
    counters: new Map(
      good === null ? [] : [...net.counters].map(([id, at]) => [id, good.estimates[at] ?? 0]),
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

/** The readings that evidence hangs on and is not set aside. */
function whatHangsOnReadings(site: Site, drawn: Derived) {
  const aside = new Set(site.setAside);
  const placed = new Set(drawn.marks.flatMap((m) => (m.place === null ? [] : [m.reading.id])));
  const located = new Map<string, string[]>();
  for (const f of site.features) {
    if (f.kind !== 'locate' || f.fields.reading === undefined) continue;
    const { reading } = f.fields.reading;
    if (!placed.has(reading) || aside.has(`locate/${f.id}`)) continue;
    located.set(reading, [...(located.get(reading) ?? []), f.id]);
  }
  const evidenced = new Set(located.keys());
  for (const { id, a, b } of site.pairs) {
    if (!placed.has(a.reading) || !placed.has(b.reading) || aside.has(`pair/${id}`)) continue;
    evidenced.add(a.reading).add(b.reading);
  }
  for (const run of site.runs) {
    for (const r of run.readings) {
      if (r.seenAt !== undefined && placed.has(r.id) && !aside.has(`seen/${run.id}/${r.id}`))
        evidenced.add(r.id);
    }
  }
  return { evidenced, located, aside };
}

function solve(net: Net, list: readonly Tagged[], { shouldStop }: FitOptions): Adjustment | null {
  if (shouldStop?.() === true) return null;
  const result = adjust(
    { estimates: [...net.start], observations: list.map((t) => t.observation) },
    shouldStop === undefined ? {} : { shouldStop },
  );
  return result.status === 'stopped' ? null : result;
}

function isSolved(result: Adjustment): result is Solved {
  return result.status !== 'singular' && result.status !== 'stopped';
}

function statusOf(fit: Adjustment, hasEvidence: boolean): FitStatus {
  if (fit.status === 'singular') return 'undetermined';
  if (fit.status === 'not-converged') return 'not-converged';
  return hasEvidence ? 'fitted' : 'no-evidence';
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

/** The pipe's own diameter (m) at a station. */
function diameterAt(derived: Derived, path: string, station: number): number {
  const stretches = derived.paths.get(path)?.path.stretches ?? [];
  return stretches.findLast((s) => s.from <= station)?.diameter ?? stretches[0]?.diameter ?? 0;
}
