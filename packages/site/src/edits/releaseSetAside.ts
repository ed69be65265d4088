import type { Site } from '../document/site';
import { tagOfName } from '../fit/tagOfName';

/**
 * Forgets what was set aside of things that a site no longer has: a name that stayed would set aside whatever gets that id later. The same
 * site when every name still stands for something.
 */
export function releaseSetAside(site: Site): Site {
  const left = site.setAside.filter((name) => tagOfName(site, name) !== null);
  return left.length === site.setAside.length ? site : { ...site, setAside: left };
}
