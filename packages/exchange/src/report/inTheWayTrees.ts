import type { DigByTree, PipeByTree, TreeTaken, TreeZones } from '@footmark/dig';
import type { Side } from '@footmark/site';
import type { ReportSetting } from './reportSetting';
import { placeReport, roundedAngle, roundedLength, roundedValues } from './rounding';
import { sourceReport } from './sourceReport';

/** What all digs together take of a tree's zones. */
export function treeReport({ tree, atLeast, zones }: TreeTaken) {
  return { tree, atLeast, zones: zones.map(takenReport) };
}

/** What one dig takes of them. */
export function digByTreeReport({ tree, dig, atLeast, holding, zones }: DigByTree) {
  return { tree, dig, atLeast, holding, zones: zones.map(takenReport) };
}

function takenReport({ radius, dug, spoil, share, ...zone }: DigByTree['zones'][number]) {
  return {
    ...zone,
    radius: roundedLength(radius),
    dug: roundedAngle(dug),
    spoil: roundedAngle(spoil),
    share: roundedAngle(share),
  };
}

/** A tree's zones by every rule, the chosen first. */
export function rootZonesReport({ tree, at, diameter, zones, ...told }: TreeZones, setting: ReportSetting) {
  const { site, words } = setting;
  return {
    tree,
    name: words.targetName({ kind: 'feature', id: tree }, site),
    ...placeReport(at),
    diameter: roundedLength(diameter),
    protected: told.protected,
    zones: zones.map(({ rule, radius, row, assumed }) => ({
      rule,
      name: words.treeRuleName(rule),
      radius: roundedLength(radius),
      row,
      ...sourceReport(row, setting),
      assumed,
    })),
    holding: roundedValues(told.holding),
  };
}

/** What of a pipe runs in a tree's zones. */
export function pipeByTreeReport({ tree, path, state, station, distance, side, zones, bore }: PipeByTree) {
  const seenWithFlow: Side = side;
  return {
    tree,
    path,
    state,
    side: seenWithFlow,
    station: roundedLength(station),
    distance: roundedLength(distance),
    zones: zones.map(({ rule, radius, length, inner, stretches }) => ({
      rule,
      radius: roundedLength(radius),
      length: roundedLength(length),
      inner: inner === null ? null : roundedLength(inner),
      stretches: stretches.map(({ from, to }) => ({ from: roundedLength(from), to: roundedLength(to) })),
    })),
    bore: roundedValues(bore),
  };
}
