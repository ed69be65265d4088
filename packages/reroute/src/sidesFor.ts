import { slopeReaching } from '@footmark/dig';
import type { Change } from '@footmark/route';
import type { Derived, Site } from '@footmark/site';
import type { RerouteAsk } from './ask';
import { betweenOf } from './requestOf';
import { deepest, outside, trenchBeside } from './siteRequest';

/**
 * How the sides of a trench have to be kept that comes as near to a boundary as a change allows: cut back by this slope at most (horizontal over
 * vertical; 0: they stand straight). Null where the trench has room there as all digs of the site are kept.
 */
export function sidesFor(site: Site, derived: Derived, ask: RerouteAsk, change: Change): number | null {
  if (change.is !== 'less-clearance') return null;
  const kind = site.features.find((f) => f.id === change.obstacle)?.kind;
  if (kind !== 'boundary' && kind !== 'boundary-line') return null;
  const between = betweenOf(derived, ask);
  const depth = between === null ? null : deepest(between);
  const trench = between === null ? null : trenchBeside(site, ask, between);
  if (depth === null || trench === null || trench.reach <= change.to) return null;
  return slopeReaching(site, depth, change.to + outside(ask) / 2) ?? 0;
}
