import type { Land } from '@footmark/dig';
import type { ReportSetting } from './reportSetting';
import { placeReport, roundedLength } from './rounding';

/** Whose land pipes and marks are on, and where pipes cross from one to the other. */
export function landReport({ stretches, crossings, marks }: Land, { site, words }: ReportSetting) {
  const nameOf = (feature: string) => words.targetName({ kind: 'feature', id: feature }, site);
  return {
    stretches: stretches.map(({ path, from, to, whose, features }) => ({
      path,
      from: roundedLength(from),
      to: roundedLength(to),
      whose,
      by: features.map((feature) => ({ feature, name: nameOf(feature), holder: holderOf(feature) })),
      display: words.whoseName(whose),
    })),
    crossings: crossings.map(({ path, station, at, feature, from, to }) => ({
      path,
      station: roundedLength(station),
      ...placeReport(at),
      feature,
      name: nameOf(feature),
      from,
      to,
    })),
    marks: marks.map(({ run, reading, whose, features }) => ({
      run,
      reading,
      mark: words.targetName({ kind: 'reading', run, id: reading }, site),
      whose,
      features,
    })),
  };

  function holderOf(id: string): string | null {
    const fields = site.features.find((f) => f.id === id)?.fields;
    return fields !== undefined && 'holder' in fields ? (fields.holder ?? null) : null;
  }
}
