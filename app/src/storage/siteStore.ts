import { type Opened, openSiteValue, type Site } from '@footmark/site';
import { database } from './database';
import type { SiteEntry } from './records';

/** The sites on this device, last saved first. */
export async function listSites(): Promise<readonly SiteEntry[]> {
  const entries = await (await database()).getAll('entries');
  return entries.sort((a, b) => b.savedAt - a.savedAt);
}

/** Reads a site and checks it as a file would be checked; null when there is none of that id. */
export async function loadSite(id: string): Promise<Opened | null> {
  const found = await (await database()).get('sites', id);
  return found === undefined ? null : openSiteValue(found.site);
}

/** Writes a site and its line in the list, both or neither. Resolves when the device has them. */
export async function saveSite(site: Site, now: number): Promise<void> {
  const tx = (await database()).transaction(['sites', 'entries'], 'readwrite', { durability: 'strict' });
  await Promise.all([
    tx.objectStore('sites').put({ id: site.id, site }),
    tx.objectStore('entries').put({
      id: site.id,
      name: site.name,
      address: site.address,
      savedAt: now,
      counts: {
        features: site.features.length,
        runs: site.runs.length,
        readings: site.runs.reduce((n, r) => n + r.readings.length, 0),
      },
    }),
    tx.done,
  ]);
}

/** Takes a site off this device, and its pictures unless another site shows them too. */
export async function removeSite(id: string): Promise<void> {
  const tx = (await database()).transaction(['sites', 'entries', 'files'], 'readwrite');
  const [sites, files] = [tx.objectStore('sites'), tx.objectStore('files')];
  const gone = JSON.stringify((await sites.get(id))?.site ?? null);
  await Promise.all([sites.delete(id), tx.objectStore('entries').delete(id)]);
  const others = (await sites.getAll()).map((other) => JSON.stringify(other.site));
  for (let at = await files.openCursor(); at !== null; at = await at.continue()) {
    const named = `"${at.value.id}"`;
    const itsOwn = at.value.site === id || gone.includes(named);
    if (itsOwn && !others.some((text) => text.includes(named))) await at.delete();
  }
  await tx.done;
}
