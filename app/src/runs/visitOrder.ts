import type { Visit } from '@footmark/site';

/** The latest day first; visits of one day, and those without a day at the end, the last added first. */
export function visitsLatestFirst(visits: readonly Visit[]): readonly Visit[] {
  return visits.toReversed().sort((a, b) => (b.date ?? '').localeCompare(a.date ?? ''));
}
