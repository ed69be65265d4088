import type { CleanoutAsked, CoverAt, CoverEnd, CoverVerdict, DrainCheck, Turn } from '@footmark/dig';
import type { SlopeVerdict } from '@footmark/site';
import type { ReportSetting } from './reportSetting';
import { placeReport, roundedAngle, roundedLength, roundedValues } from './rounding';
import { sourceReport } from './sourceReport';

/** What the code asks of a drain, and what of that it has. */
export function drainReport(check: DrainCheck, setting: ReportSetting) {
  const { site, words } = setting;
  const {
    path,
    state,
    length,
    developed,
    fall,
    flow,
    cover,
    tap,
    cleanouts,
    narrowCleanouts,
    turns,
    sharpTurns,
    water,
  } = check;
  return {
    path,
    name: words.targetName({ kind: 'path', id: path }, site),
    state,
    length: roundedLength(length),
    developedLength: roundedLength(developed),
    flow: roundedValues(flow),
    fall: {
      required: roundedLength(fall.required),
      available: roundedValues(fall.available),
      asked: fall.asked.map(({ least, ...asked }) => ({
        ...roundedValues(asked),
        least: roundedAngle(least.value),
        ...sourceReport(least.name, setting),
      })),
      slopes: fall.slopes.map(({ least, from, to, slope, sigma, verdict }) => ({
        from: roundedLength(from),
        to: roundedLength(to),
        slope: roundedAngle(slope),
        sigma: roundedAngle(sigma),
        least: roundedAngle(least.value),
        verdict: verdict satisfies SlopeVerdict,
      })),
    },
    cover: {
      head: coverEndReport(cover.head),
      end: coverEndReport(cover.end),
      least: cover.least === null ? null : coverReport(cover.least),
      notKnown: roundedValues(cover.gaps),
      evenGround: cover.evenGround,
      asked: coverVerdictReport(cover.leastCover),
      frost: cover.frost === null ? null : coverVerdictReport(cover.frost),
    },
    tap: roundedValues(tap),
    cleanouts: cleanouts.map(cleanoutReport),
    narrowCleanouts: narrowCleanouts.map(({ place, station, ...narrow }) => ({
      ...roundedValues(narrow),
      station: roundedLength(station),
      ...placeReport(place),
    })),
    turns: turns.map(turnReport),
    sharpTurns: sharpTurns.map(turnReport),
    water: water.map(
      ({ service, distance, station, from, above, asked, aboveAsked, sigma, rule, ...told }) => ({
        service,
        name: words.targetName({ kind: 'feature', id: service }, site),
        distance: roundedLength(distance),
        station: roundedLength(station),
        ...placeReport(from),
        asked: roundedLength(asked),
        above: above === null ? null : roundedLength(above),
        aboveAsked: roundedLength(aboveAsked),
        sigma: roundedLength(sigma),
        verdict: told.verdict,
        by: told.by,
        sure: told.sure,
        crosses: told.crosses,
        isMain: told.isMain,
        missing: told.missing,
        rule,
        ...sourceReport(rule, setting),
      }),
    ),
  };
}

function coverReport({ station, place, cover, sigma }: CoverAt) {
  return {
    station: roundedLength(station),
    ...placeReport(place),
    cover: roundedLength(cover),
    sigma: roundedLength(sigma),
  };
}

function coverEndReport(end: CoverEnd) {
  return 'cover' in end ? coverReport(end) : { station: roundedLength(end.station), because: end.because };
}

function coverVerdictReport({ asked, verdict, sure }: CoverVerdict) {
  return { asked: roundedLength(asked), verdict, sure };
}

function cleanoutReport({ station, place, reason, turn, by }: CleanoutAsked) {
  return {
    station: roundedLength(station),
    ...placeReport(place),
    reason,
    turn: turn === null ? null : roundedAngle(turn),
    by,
  };
}

function turnReport({ vertex, station, place, turn, radius }: Turn) {
  return {
    vertex,
    station: roundedLength(station),
    ...placeReport(place),
    turn: roundedAngle(turn),
    radius: roundedLength(radius),
  };
}
