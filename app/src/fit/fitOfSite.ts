import type { RunsFit, Site } from '@footmark/site';
import { derivedFrom } from '../session/siteSession';
import { knownFits } from './knownFits';
import { weigh } from './weigh';

/**
 * What a site comes to, weighed on the spot when no answer for just this state is there yet: for what leaves the device. Null when it
 * cannot be weighed.
 */
export function fitOfSite(site: Site): RunsFit | null {
  const known = knownFits.get(site);
  if (known !== undefined) return known;
  const weighed = weigh(site, derivedFrom(site));
  if (weighed.failed) return null;
  knownFits.set(site, weighed.fit);
  return weighed.fit;
}
