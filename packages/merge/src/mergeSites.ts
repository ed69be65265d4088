import type { Site } from '@footmark/site';
import { makeSound } from './makeSound';
import { mergeParts, type OtherVersion, UNKNOWN } from './mergeParts';
import { valueAt } from './place';
import { canonicalText, sameValue } from './sameValue';
import { sitePart } from './siteParts';

export type MergedSite = { readonly site: Site; readonly others: readonly OtherVersion[] };

/**
 * Merges two states of one site, each sound, that both grew from `base` (null: it is not known). `others` are the versions of things that `site`
 * has otherwise; no two are the same. `site` is sound; `mine` itself when theirs adds nothing. `site` has my version of what both changed.
 */
export function mergeSites(base: Site | null, mine: Site, theirs: Site): MergedSite {
  if (mine === theirs || (base !== null && base === theirs)) return { site: mine, others: [] };
  const found: OtherVersion[] = [];
  const made = mergeParts(sitePart, { base: base ?? UNKNOWN, mine, theirs }, [], found);
  const site = made as Site; // every part is one of either site's
  const sound =
    site === mine ? { site, others: found } : makeSound(base, mine, theirs, { site, others: found });
  return { site: sound.site, others: distinctVersions(sound.site, sound.others) };
}

/** Other versions without those that are as the site has them, and each once. */
export function distinctVersions(site: Site, others: readonly OtherVersion[]): readonly OtherVersion[] {
  const seen = new Set<string>();
  return others.filter((version) => {
    const text = canonicalText(version);
    if (seen.has(text) || isAsInSite(site, version)) return false;
    seen.add(text);
    return true;
  });
}

/** A run's version without readings is held against the run's own facts. */
function isAsInSite(site: Site, { place, other }: OtherVersion): boolean {
  const now = valueAt(site, place) ?? null;
  if (sameValue(now, other)) return true;
  const [list, , inside] = place;
  if (list !== 'runs' || inside !== undefined || now === null || other === null) return false;
  return !('readings' in Object(other)) && sameValue({ ...now, readings: undefined }, other);
}
