import type { Site } from '@footmark/site';
import { useSiteSession } from '../session/siteSession';
import { markDownloaded } from '../storage/siteStore';

/** Remembers that a file holds all of the open site as it is now. Another version of it that is looked at is not the site. */
export function keptAsFile(site: Site): void {
  if (site !== useSiteSession.getState().site) return;
  void markDownloaded(site.id).catch(() => {}); // a device that keeps nothing needs no reminder
}
