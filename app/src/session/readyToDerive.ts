import { loadProjection, needsProjection, type Site } from '@footmark/site';

/** Brings what `derive` needs for this site and is not here from the start. Rejects when it cannot be had. */
export async function readyToDerive(site: Site): Promise<void> {
  if (needsProjection(site)) await loadProjection();
}
