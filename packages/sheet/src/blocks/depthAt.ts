import { type Derived, profileAt, type RunsFit, type SearchZone } from '@footmark/site';

/** From the ground to the invert (m) with its standard deviation; null where the levels do not tell. */
export function depthAt(
  { profiles }: Derived,
  path: string,
  station: number,
): Readonly<{ depth: number; sigma: number }> | null {
  const profile = profiles.get(path);
  if (profile === undefined) return null;
  const { ground, pipe } = profileAt(profile, station);
  if (ground === null || pipe === null) return null;
  return { depth: ground.level - pipe.invert, sigma: Math.hypot(ground.sigma, pipe.sigma) };
}

/** The hole that is sure to find a mark; null without a fit, or where nothing bounds it. */
export function holeOf(fit: RunsFit | null, reading: string): SearchZone['hole'] | null {
  const hole = fit?.marks.get(reading)?.zone.hole;
  return hole !== undefined && Number.isFinite(hole.length) && Number.isFinite(hole.width) ? hole : null;
}
