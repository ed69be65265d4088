import {
  type FitObservation,
  isEvidence,
  type ObservationTag,
  observationName,
  type RunsFit,
} from '@footmark/site';
import { countText } from './countText';

/** Standard deviations that a normal error passes, to either side, once in so many times. Table of the normal distribution. */
const CHANCES = [
  [4.892, 1_000_000],
  [3.891, 10_000],
  [3.291, 1_000],
  [2.576, 100],
  [1.96, 20],
] as const;

/** Of a fit that passes the limit of its test, one in so many is sound: its upper side is half of the test's 5 %. */
export const TEST_CHANCE = 40;

/** Less than once in how many times a misfit of so many of its own standard deviations comes about by chance; null: as expected. */
export function chanceOf(standardized: number): string | null {
  const times = Math.abs(standardized);
  const chance = CHANCES.find(([least]) => times >= least)?.[1];
  return chance === undefined ? null : countText(chance);
}

/** How many times something is what is usual, to tenths below ten. */
export function timesOf(times: number): string {
  const size = Math.abs(times);
  return String(size >= 10 ? Math.round(size) : Number(size.toFixed(1)));
}

/** Longest way (m) that a mark or a point of a pipe would move; 0 when nothing would. */
export function furthestMove({ pending, marks, taken }: RunsFit): number {
  if (pending === 0 && taken) return 0;
  return [...marks.values()].reduce((most, { fitted }) => Math.max(most, fitted?.off ?? 0), pending);
}

/** How many pieces of evidence count. */
export function countedEvidence(fit: RunsFit): number {
  return new Set(fit.observations.filter((o) => isEvidence(o.tag)).map((o) => o.name)).size;
}

/** What hangs on nothing. */
export function looseTags(fit: RunsFit): readonly ObservationTag[] {
  const tags = new Map(
    [...fit.observations.map((o) => o.tag), ...fit.aside].map((tag) => [observationName(tag), tag]),
  );
  return fit.loose.flatMap((name) => tags.get(name) ?? []);
}

/** The evidence that fits least. */
export function worstEvidence(fit: RunsFit): ObservationTag | null {
  const worst = fit.observations.reduce<FitObservation | null>(
    (most, o) =>
      isEvidence(o.tag) && Math.abs(o.standardized) > Math.abs(most?.standardized ?? 0) ? o : most,
    null,
  );
  return worst?.tag ?? null;
}
