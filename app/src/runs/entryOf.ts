import type { Feature, Run, Site } from '@footmark/site';

/** The feature that a run went in at, if one is chosen. */
export function entryOf(site: Site, run: Run): Feature | undefined {
  return site.features.find((f) => f.id === run.entry);
}
