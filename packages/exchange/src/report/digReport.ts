import type { AnyDigFinding, EdgeClearance, Excavation, InTheWay } from '@footmark/dig';
import { ruleOf } from '@footmark/site';
import type { ReportSetting } from './reportSetting';
import { roundedLength } from './rounding';

/** What stands in the way: planned digs with what they take, how near things are, and what must be seen to. */
export function digReport({ excavations, clearances, trees, findings }: InTheWay, setting: ReportSetting) {
  return {
    digs: excavations.map((excavation) => excavationReport(excavation, setting)),
    trees: trees.totals,
    clearances: clearances.map(clearanceReport),
    findings: findings.map((finding) => findingReport(finding, setting)),
  };
}

function excavationReport(excavation: Excavation, { site, words }: ReportSetting) {
  const { dig, path, depth, sides, bottom, top, volume, spoil, egress, restore } = excavation;
  return {
    id: dig.id,
    name: words.targetName({ kind: 'dig', id: dig.id }, site),
    path,
    depth,
    sides,
    bottom:
      bottom === null ? null : { length: roundedLength(bottom.length), width: roundedLength(bottom.width) },
    top: top === null ? null : { width: roundedLength(top.width), area: roundedLength(top.area) },
    volume: volume === null ? null : roundedLength(volume),
    spoil: spoil === null ? null : { volume: roundedLength(spoil.volume), side: spoil.side },
    egress: egress.map(({ station }) => roundedLength(station)),
    restore,
  };
}

function clearanceReport({ of, feature, distance, rule, required, verdict, toCentre }: EdgeClearance) {
  return {
    of,
    feature,
    distance: roundedLength(distance),
    toCentre,
    rule,
    required: required === null ? null : roundedLength(required),
    verdict,
  };
}

function findingReport(finding: AnyDigFinding, { site, words }: ReportSetting) {
  const { code, severity, at, rule, values } = finding;
  return {
    code,
    severity,
    at,
    name: words.targetName(at, site),
    source: rule === null ? null : words.basisText(ruleOf(site, rule).row),
    values,
    ...words.digFindingText(finding, site),
  };
}
