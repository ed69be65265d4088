import type {
  AnyDigFinding,
  DigDepth,
  EdgeClearance,
  Excavation,
  InTheWay,
  Restore,
  TreeTaken,
} from '@footmark/dig';
import { ruleOf } from '@footmark/site';
import type { ReportSetting } from './reportSetting';
import { roundedAngle, roundedLength, roundedValues } from './rounding';

/** What stands in the way: planned digs with what they take, how near things are, and what must be seen to. */
export function digReport({ excavations, clearances, trees, findings }: InTheWay, setting: ReportSetting) {
  return {
    digs: excavations.map((excavation) => excavationReport(excavation, setting)),
    trees: trees.totals.map(treeReport),
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
    depth: depth === null ? null : depthReport(depth),
    sides: { ...sides, slope: roundedAngle(sides.slope) },
    bottom:
      bottom === null ? null : { length: roundedLength(bottom.length), width: roundedLength(bottom.width) },
    top:
      top === null
        ? null
        : {
            width: roundedLength(top.width),
            length: roundedLength(top.length),
            area: roundedLength(top.area),
          },
    volume: volume === null ? null : roundedLength(volume),
    spoil: spoil === null ? null : { volume: roundedLength(spoil.volume), side: spoil.side },
    egress: egress.map(({ station }) => roundedLength(station)),
    restore: restore === null ? null : restoreReport(restore),
  };
}

function depthReport({ least, most, sigma, from }: DigDepth) {
  return { least: roundedLength(least), most: roundedLength(most), sigma: roundedLength(sigma), from };
}

/** Areas, m². */
function restoreReport({ pavements, paved, lawn, beyond }: Restore) {
  return {
    pavements: pavements.map(({ feature, area }) => ({ feature, area: roundedLength(area) })),
    paved: roundedLength(paved),
    lawn: roundedLength(lawn),
    beyond: roundedLength(beyond),
  };
}

function treeReport({ tree, atLeast, zones }: TreeTaken) {
  return {
    tree,
    atLeast,
    zones: zones.map(({ radius, dug, spoil, share, ...zone }) => ({
      ...zone,
      radius: roundedLength(radius),
      dug: roundedAngle(dug),
      spoil: roundedAngle(spoil),
      share: roundedAngle(share),
    })),
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
    values: roundedValues(values),
    ...words.digFindingText(finding, site),
  };
}
