import { type Opened, openSiteValue, type Site } from '@footmark/site';
import { database } from './database';
import type { SiteEntry } from './records';

/** Sites rest in the bin for this long (ms): 30 days. */
const BIN_MS = 30 * 24 * 60 * 60 * 1000;

/** The sites on this device and those in its bin, last saved first. What has lain in the bin for 30 days at `now` (ms) goes for good. */
export async function listSites(
  now: number,
): Promise<{ readonly sites: readonly SiteEntry[]; readonly bin: readonly SiteEntry[] }> {
  const entries = await (await database()).getAll('entries');
  const overdue = entries.filter((e) => e.deletedAt !== undefined && now - e.deletedAt > BIN_MS);
  for (const { id } of overdue) await removeSite(id);
  const kept = entries.filter((e) => !overdue.includes(e)).sort((a, b) => b.savedAt - a.savedAt);
  return {
    sites: kept.filter((e) => e.deletedAt === undefined),
    bin: kept.filter((e) => e.deletedAt !== undefined),
  };
}

/** Puts a site into the bin at `now` (ms), or takes it out again (null). */
export async function binSite(id: string, now: number | null): Promise<void> {
  const tx = (await database()).transaction('entries', 'readwrite');
  const entry = await tx.store.get(id);
  if (entry !== undefined) {
    const { deletedAt: _, ...rest } = entry;
    await tx.store.put(now === null ? rest : { ...rest, deletedAt: now });
  }
  await tx.done;
}

/** Reads a site and checks it as a file would be checked; null when there is none of that id. */
export async function loadSite(id: string): Promise<Opened | null> {
  const found = await (await database()).get('sites', id);
  return found === undefined ? null : openSiteValue(found.site);
}

/** Whether a site of this id is on the device, in the bin too. */
export async function hasSite(id: string): Promise<boolean> {
  return (await (await database()).getKey('sites', id)) !== undefined;
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

/** Takes a site off this device for good, what a crew found there, and its pictures unless another site shows them too. */
async function removeSite(id: string): Promise<void> {
  const tx = (await database()).transaction(['sites', 'entries', 'files', 'answers'], 'readwrite');
  const [sites, files] = [tx.objectStore('sites'), tx.objectStore('files')];
  const gone = JSON.stringify((await sites.get(id))?.site ?? null);
  await Promise.all([sites.delete(id), tx.objectStore('entries').delete(id)]);
  const others = (await sites.getAll()).map((other) => JSON.stringify(other.site));
  for (let at = await files.openCursor(); at !== null; at = await at.continue()) {
    const named = `"${at.value.id}"`;
    const itsOwn = at.value.site === id || gone.includes(named);
    if (itsOwn && !others.some((text) => text.includes(named))) await at.delete();
  }
  for (let at = await tx.objectStore('answers').openCursor(); at !== null; at = await at.continue()) {
    if (at.value.site === id) await at.delete();
  }
  await tx.done;
}
