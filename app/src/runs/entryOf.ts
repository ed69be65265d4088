import type { Feature, Run, Site } from '@footmark/site';
import { words } from '../words';

/** The feature that a run went in at, if one is chosen. */
export function entryOf(site: Site, run: Run): Feature | undefined {
  return site.features.find((f) => f.id === run.entry);
}

/** What that feature is called; null where none is chosen. */
export function entryName(site: Site, run: Run): string | null {
  const entry = entryOf(site, run);
  return entry === undefined ? null : words.targetName({ kind: 'feature', id: entry.id }, site);
}
