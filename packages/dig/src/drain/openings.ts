import { stationOf } from '@footmark/geometry';
import type { Derived, DerivedPath, Site } from '@footmark/site';

/** Something that a pipe can be cleaned from, at a station of it (m). */
export type Opening = {
  readonly feature: string;
  readonly station: number;
  readonly is: 'cleanout' | 'manhole' | 'stack';
  /** Where it is given (m). */
  readonly diameter: number | null;
};

/** Lengths and heights of a drain are equal within this (m). */
export const SAME_M = 1e-6;

/** Openings on a path with its flow: tied to one of its points, or within the site's reach of entries from it. */
export function openingsOf(
  site: Site,
  { features }: Pick<Derived, 'features'>,
  on: DerivedPath,
): readonly Opening[] {
  const found: Opening[] = [];
  for (const { feature, points } of features.values()) {
    if (feature.kind !== 'stack' && feature.kind !== 'cleanout' && feature.kind !== 'manhole') continue;
    const [at] = points;
    if (at === undefined) continue;
    const { station, distance } = stationOf(on.line, at);
    if (distance > site.entryReach && !on.tiedTo.includes(feature.id)) continue;
    found.push({ feature: feature.id, station, is: feature.kind, diameter: feature.fields.diameter ?? null });
  }
  return found.sort((a, b) => a.station - b.station);
}

/** The nearest to a station that is no further off than `within` (m). */
export function nearestOpening(
  openings: readonly Opening[],
  station: number,
  within: number,
): Opening | null {
  let found: Opening | null = null;
  let best = within + SAME_M;
  for (const opening of openings) {
    const away = Math.abs(opening.station - station);
    if (away < best) [found, best] = [opening, away];
  }
  return found;
}
