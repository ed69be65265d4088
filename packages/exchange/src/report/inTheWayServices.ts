import type { Services, WhiteLine } from '@footmark/dig';
import type { Ties } from '@footmark/site';
import type { ReportSetting } from './reportSetting';
import { placeReport, roundedAngle, roundedLength } from './rounding';
import { tiesReport } from './tiesReport';

const lengthOrNull = (metres: number | null) => (metres === null ? null : roundedLength(metres));

/** Where pipes cross other services, what is dug by hand near them, and how it stands with the one-call ticket. */
export function servicesReport(
  { crossings, paths, digs, oneCall }: Services,
  { site, words }: ReportSetting,
) {
  const nameOf = (feature: string) => words.targetName({ kind: 'feature', id: feature }, site);
  return {
    oneCall: { ...oneCall, ticket: site.digging.oneCall ?? null },
    crossings: crossings.map(({ at, angle, gap, station, feature, ...told }) => ({
      ...told,
      feature,
      name: nameOf(feature),
      station: roundedLength(station),
      ...placeReport(at),
      angle: roundedAngle(angle),
      gap: lengthOrNull(gap),
    })),
    pipesInZones: paths.map(({ path, feature, length, stretches }) => ({
      path,
      feature,
      name: nameOf(feature),
      length: roundedLength(length),
      stretches: stretches.map(({ from, to }) => ({ from: roundedLength(from), to: roundedLength(to) })),
    })),
    digsInZones: digs.map(({ dig, feature, kind, distance, at, handDig, below }) => ({
      dig,
      feature,
      kind,
      name: nameOf(feature),
      distance: roundedLength(distance),
      ...placeReport(at),
      handDig: lengthOrNull(handDig),
      below: lengthOrNull(below),
    })),
  };
}

/** What is lined in white before the ground is marked, with the tapes to its corners. */
export function whiteLineReport({ digs, corners, area, length, atLeast }: WhiteLine, setting: ReportSetting) {
  return {
    digs,
    atLeast,
    area: roundedLength(area),
    length: roundedLength(length),
    corners: corners.map(({ at, ties }) => cornerReport(at, ties, setting)),
  };
}

function cornerReport(at: WhiteLine['corners'][number]['at'], ties: Ties | null, setting: ReportSetting) {
  return { ...placeReport(at), ties: ties === null ? null : tiesReport(ties, setting) };
}
