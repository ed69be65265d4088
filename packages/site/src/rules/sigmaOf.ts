import type { Site } from '../document/site';
import { type SigmaName, sigmas } from './sigmas';

/** One standard deviation of a kind of measurement (m, rad or a share): the site's own, else the table's. */
export function sigmaOf(site: Pick<Site, 'sigmas'>, name: SigmaName): number {
  return site.sigmas[name] ?? sigmas[name].value;
}
