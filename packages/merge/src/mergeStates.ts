import type { Site } from '@footmark/site';
import { changesBetween } from './changesBetween';
import type { SiteState } from './siteState';
import { join } from './stampedSite';
import { stampSite } from './stampSite';
import { viewSite } from './viewSite';

/** The later name stands where two gave a thing a value at one count. */
const [BASE, THEIRS, MINE] = ['a', 'b', 'c'];

/**
 * Merges two states of one site, each sound, that both grew from `base` (null: it is not known). What both changed is as in mine, their
 * version beside it. A version that either side has chosen about is gone; one that either has come to know of stays. The site is sound; `mine.site`
 * itself when theirs adds nothing.
 */
export function mergeStates(base: SiteState | null, mine: SiteState, theirs: SiteState): SiteState {
  const stamped = base === null ? null : stampSite(null, base, { by: BASE });
  const joined = join(stampSite(stamped, mine, { by: MINE }), stampSite(stamped, theirs, { by: THEIRS }));
  const view = viewSite(joined, mine.site);
  if (view === null) {
    const changed = changesBetween(base?.site ?? mine.site, theirs.site);
    const waiting = changed.map(({ place, after }) => ({ place, other: after ?? null }));
    return { ...mine, others: [...mine.others, ...theirs.others, ...waiting] };
  }
  return { site: view.site, others: view.others, binnedAt: view.binnedAt };
}

export type MergedSite = Pick<SiteState, 'site' | 'others'>;

/** As `mergeStates`, of sites beside which nothing waits. */
export function mergeSites(base: Site | null, mine: Site, theirs: Site): MergedSite {
  if (mine === theirs || (base !== null && base === theirs)) return { site: mine, others: [] };
  const state = (site: Site): SiteState => ({ site, others: [], binnedAt: null });
  const { site, others } = mergeStates(base === null ? null : state(base), state(mine), state(theirs));
  return { site, others };
}
