import { type Opened, openSiteValue, type Site } from '@footmark/site';
import { type DBSchema, type IDBPDatabase, openDB } from 'idb';

/** What the list of sites shows, without opening each. */
export type SiteEntry = {
  readonly id: string;
  readonly name: string;
  readonly address: string;
  /** Milliseconds since 1970 of the last save. */
  readonly savedAt: number;
  readonly counts: { readonly features: number; readonly runs: number; readonly readings: number };
};

interface SiteDatabase extends DBSchema {
  sites: { key: string; value: { id: string; site: unknown } };
  entries: { key: string; value: SiteEntry };
}

let opening: Promise<IDBPDatabase<SiteDatabase>> | null = null;

function database(): Promise<IDBPDatabase<SiteDatabase>> {
  opening ??= openDB<SiteDatabase>('footmark', 1, {
    upgrade(db) {
      db.createObjectStore('sites', { keyPath: 'id' });
      db.createObjectStore('entries', { keyPath: 'id' });
    },
    terminated() {
      opening = null;
    },
  }).catch((error: unknown) => {
    opening = null;
    throw error;
  });
  return opening;
}

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

/** Takes a site off this device. */
export async function removeSite(id: string): Promise<void> {
  const tx = (await database()).transaction(['sites', 'entries'], 'readwrite');
  await Promise.all([tx.objectStore('sites').delete(id), tx.objectStore('entries').delete(id), tx.done]);
}
