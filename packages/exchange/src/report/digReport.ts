import type { AnyDigFinding, DigDepth, EdgeClearance, Excavation, InTheWay, Restore } from '@footmark/dig';
import { treeRuleOf } from '@footmark/site';
import { cautionCodes } from '@footmark/words';
import { drainReport } from './inTheWayDrain';
import { landReport } from './inTheWayLand';
import { servicesReport, whiteLineReport } from './inTheWayServices';
import { digByTreeReport, pipeByTreeReport, rootZonesReport, treeReport } from './inTheWayTrees';
import type { ReportSetting } from './reportSetting';
import { placeReport, roundedAngle, roundedLength, roundedValues } from './rounding';
import { sourceReport } from './sourceReport';

/**
 * What stands in the way: planned digs with what they take, how near things are, whose land it is, other services, what the code asks of the
 * drain, what must be seen to, and what is said to everybody who digs.
 */
export function digReport(inTheWay: InTheWay, setting: ReportSetting) {
  const { excavations, clearances, trees, land, services, drains, whiteLines, findings } = inTheWay;
  const { site, words } = setting;
  return {
    ruleSet: { set: site.rules.set, name: words.ruleSetName(site.rules.set), trees: treeRuleOf(site) },
    digs: excavations.map((excavation) => excavationReport(excavation, setting)),
    trees: trees.totals.map(treeReport),
    digsByTrees: trees.digs.map(digByTreeReport),
    pipesByTrees: trees.pipes.map(pipeByTreeReport),
    rootZones: trees.trees.map((tree) => rootZonesReport(tree, setting)),
    clearances: clearances.map((clearance) => clearanceReport(clearance, setting)),
    land: landReport(land, setting),
    services: servicesReport(services, setting),
    drains: drains.paths.map((check) => drainReport(check, setting)),
    whiteLines: whiteLines.map((line) => whiteLineReport(line, setting)),
    findings: findings.map((finding) => findingReport(finding, setting)),
    notes: site.digging.notes.map(({ id, at, text }) => ({ id, at, text })),
    cautions: cautionCodes.map((code) => ({ code, ...words.cautionText(code) })),
  };
}

function excavationReport(excavation: Excavation, { site, words }: ReportSetting) {
  const { dig, path, depth, sides, bottom, top, volume, spoil, egress, restore } = excavation;
  return {
    id: dig.id,
    name: words.targetName({ kind: 'dig', id: dig.id }, site),
    path,
    depth: depth === null ? null : depthReport(depth),
    sides: { ...sides, slope: roundedAngle(sides.slope), upright: roundedLength(sides.upright) },
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

function clearanceReport(clearance: EdgeClearance, setting: ReportSetting) {
  const { of, feature, distance, station, at, rule, required, verdict, toCentre } = clearance;
  const { site, words } = setting;
  return {
    of,
    feature,
    name: words.targetName({ kind: 'feature', id: feature }, site),
    distance: roundedLength(distance),
    station: station === null ? null : roundedLength(station),
    from: placeReport(clearance.from),
    ...placeReport(at),
    toCentre,
    rule,
    ...(rule === null ? { source: null, changed: null } : sourceReport(rule, setting)),
    required: required === null ? null : roundedLength(required),
    verdict,
    display: words.obstacleText(clearance, site),
  };
}

function findingReport(finding: AnyDigFinding, setting: ReportSetting) {
  const { code, severity, at, place, rule, values } = finding;
  const { site, words } = setting;
  return {
    code,
    severity,
    at,
    name: words.targetName(at, site),
    place: place === null ? null : placeReport(place),
    rule,
    ...(rule === null ? { source: null, changed: null } : sourceReport(rule, setting)),
    values: roundedValues(values),
    ...words.digFindingText(finding, site),
  };
}
