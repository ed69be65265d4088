import type { FitObservation, FittedRun, RunsFit, SearchZone } from '@footmark/site';
import { holeSizeText, lengthText } from '@footmark/words';
import type { ReportSetting } from './reportSetting';
import { roundedAngle, roundedLength } from './rounding';

/** How all runs, lines and locates weighed together come out; marks carry their own zones. */
export function fitReport(fit: RunsFit) {
  const { status, taken, pending, sigma0, dof, test, loose } = fit;
  return {
    status,
    taken,
    pending: roundedLength(pending),
    sigma0: sigma0 === null ? null : roundedAngle(sigma0),
    dof,
    test:
      test === null
        ? null
        : { ...test, statistic: roundedAngle(test.statistic), upper: roundedAngle(test.upper) },
    loose,
    runs: fit.runs.map(runReport),
    paths: fit.paths.map(({ id, points }) => ({
      id,
      points: points.map(({ vertex, at, moved }) => ({
        vertex,
        x: roundedLength(at.x),
        y: roundedLength(at.y),
        moved: roundedLength(moved),
      })),
    })),
    blunders: fit.blunders.map((group) =>
      group.map(({ name, standardized, blunder, observed }) => ({
        observation: name,
        standardized: roundedAngle(standardized),
        blunder: roundedLength(blunder),
        observed: roundedLength(observed),
      })),
    ),
    observations: fit.observations.map(observationReport),
  };
}

function runReport({ id, scale, zero, entryLeg }: FittedRun) {
  return {
    id,
    scale: figureReport(scale, roundedAngle),
    zero: figureReport(zero, roundedLength),
    entryLeg: figureReport(entryLeg, roundedLength),
  };
}

function figureReport({ said, fitted, sigma }: FittedRun['scale'], rounded: (of: number) => number) {
  return { said: rounded(said), fitted: rounded(fitted), sigma: rounded(sigma) };
}

function observationReport({ name, observed, sigma, residual, standardized, redundancy }: FitObservation) {
  return {
    observation: name,
    observed: roundedLength(observed),
    sigma: roundedLength(sigma),
    residual: roundedLength(residual),
    standardized: roundedAngle(standardized),
    redundancy: roundedAngle(redundancy),
  };
}

/** Where a mark is at 95 %, and the hole that finds it. */
export function zoneReport(zone: SearchZone, { site }: ReportSetting) {
  return {
    semiMajor: roundedLength(zone.semiMajor),
    semiMinor: roundedLength(zone.semiMinor),
    azimuth: roundedAngle(zone.azimuth),
    along: roundedLength(zone.along),
    across: roundedLength(zone.across),
    hole: { length: roundedLength(zone.hole.length), width: roundedLength(zone.hole.width) },
    makeUp: zone.makeUp.map(({ source, along, across }) => ({
      source,
      along: roundedLength(along),
      across: roundedLength(across),
    })),
    display: {
      hole: holeSizeText(zone.hole, site.units),
      along: lengthText(zone.along, site.units),
      across: lengthText(zone.across, site.units),
    },
  };
}
