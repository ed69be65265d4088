import { type Clearance, type Mark, type MarkPlace, markState, type OffsetPaint } from '@footmark/site';
import { counterText, directionText, lengthText } from '@footmark/words';
import { zoneReport } from './fitReport';
import type { ReportSetting } from './reportSetting';
import { roundedAngle, roundedLength } from './rounding';
import { tiesReport } from './tiesReport';

/** A mark: the reading, how its number came about, and its place with ties and clearances. */
export function markReport(mark: Mark, setting: ReportSetting) {
  const { site, derived, fit, words } = setting;
  const { run, reading, label, trace, place } = mark;
  const zone = fit?.marks.get(reading.id)?.zone;
  return {
    label,
    run: run.id,
    reading: reading.id,
    seen: reading.seen,
    seenName: words.observationName(reading.seen),
    clock: reading.clock ?? null,
    passed: reading.passed,
    state: markState(mark, derived.locates),
    note: reading.note,
    trace: {
      counter: roundedLength(trace.counter),
      counted: roundedLength(trace.counted),
      zero: roundedLength(trace.zero),
      scale: roundedAngle(trace.scale),
      cable: roundedLength(trace.cable),
      riser: trace.riser === null ? null : roundedLength(trace.riser),
      sweepRadius: trace.sweepRadius === null ? null : roundedLength(trace.sweepRadius),
      entryLeg: roundedLength(trace.entryLeg),
      along: roundedLength(trace.along),
    },
    steps: words.traceSteps(mark, site, derived),
    display: {
      counter: counterText(trace.counter, site.units),
      along: lengthText(trace.along, site.units),
    },
    place: place === null ? null : placeReport(place, setting),
    zone: zone === undefined ? null : zoneReport(zone, setting),
  };
}

function placeReport(place: MarkPlace, setting: ReportSetting) {
  const { site, words } = setting;
  return {
    path: place.path,
    pathName: words.targetName({ kind: 'path', id: place.path }, site),
    station: roundedLength(place.station),
    x: roundedLength(place.at.x),
    y: roundedLength(place.at.y),
    flow: roundedAngle(place.flow),
    display: {
      station: lengthText(place.station, site.units),
      x: lengthText(place.at.x, site.units),
      y: lengthText(place.at.y, site.units),
      flow: directionText(place.flow, site.units),
    },
    ties: place.ties === null ? null : tiesReport(place.ties, setting),
    paint: place.paint === null ? null : paintReport(place.paint, setting),
    clearances: place.clearances.map((clearance) => clearanceReport(clearance, setting)),
  };
}

/** Where paint stands beside a mark that cannot be painted. */
function paintReport({ at, ties }: OffsetPaint, setting: ReportSetting) {
  const { units } = setting.site;
  return {
    x: roundedLength(at.x),
    y: roundedLength(at.y),
    display: { x: lengthText(at.x, units), y: lengthText(at.y, units) },
    ties: ties === null ? null : tiesReport(ties, setting),
  };
}

function clearanceReport(clearance: Clearance, { site, words }: ReportSetting) {
  return {
    feature: clearance.feature,
    kind: clearance.kind,
    name: words.clearanceName(clearance, site),
    distance: roundedLength(clearance.distance),
    x: roundedLength(clearance.at.x),
    y: roundedLength(clearance.at.y),
    toCentre: clearance.toCentre,
    display: lengthText(clearance.distance, site.units),
  };
}
