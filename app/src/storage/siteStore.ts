import type { OtherVersion } from '@footmark/merge';
import { type Opened, openSiteValue, type Site } from '@footmark/site';
import { type DeviceDatabase, database } from './database';
import type { SiteEntry } from './records';
import { removeSite } from './removeSite';
import { tellSiteNews } from './siteNews';
import { putSite, SITE_STORES } from './writeSite';

/** Sites rest in the bin for this long (ms): 30 days. */
const BIN_MS = 30 * 24 * 60 * 60 * 1000;
/** A clock may stand wrong for an hour: what is overdue by it goes a day after that was first seen (ms). */
const OVERDUE_MS = 24 * 60 * 60 * 1000;

/** The sites on this device and those in its bin, last saved first. What has lain in the bin for 30 days at `now` (ms) goes for good; `purged` is how many. */
export async function listSites(now: number): Promise<{
  readonly sites: readonly SiteEntry[];
  readonly bin: readonly SiteEntry[];
  readonly purged: number;
}> {
  const entries = await (await database()).getAll('entries');
  const gone = new Set<string>();
  for (const entry of entries) {
    if (entry.deletedAt === undefined) continue;
    const overdue = now - entry.deletedAt > BIN_MS;
    if (overdue && entry.overdueSince !== undefined && now - entry.overdueSince > OVERDUE_MS) {
      await removeSite(entry.id);
      gone.add(entry.id);
    } else if (overdue !== (entry.overdueSince !== undefined) || (entry.overdueSince ?? 0) > now) {
      await markOverdue(entry.id, overdue ? now : null);
    }
  }
  const kept = entries.filter((e) => !gone.has(e.id)).sort((a, b) => b.savedAt - a.savedAt);
  return {
    sites: kept.filter((e) => e.deletedAt === undefined),
    bin: kept.filter((e) => e.deletedAt !== undefined),
    purged: gone.size,
  };
}

async function markOverdue(id: string, since: number | null): Promise<void> {
  await changeEntry(id, ({ overdueSince: _, ...entry }) =>
    since === null ? entry : { ...entry, overdueSince: since },
  );
}

/** Puts a site into the bin at `now` (ms), or takes it out again (null). */
export async function binSite(id: string, now: number | null): Promise<void> {
  await changeEntry(id, ({ deletedAt: _, overdueSince: __, ...entry }) => ({
    ...(now === null ? entry : { ...entry, deletedAt: now }),
    seq: (entry.seq ?? 0) + 1,
  }));
}

/** Marks a site as the team's, too. */
export async function shareSite(id: string): Promise<void> {
  await changeEntry(id, (entry) => ({ ...entry, team: true }));
}

/** Remembers that a site was downloaded as a file as it is now. */
export async function markDownloaded(id: string): Promise<void> {
  await changeEntry(id, (entry) => ({ ...entry, downloadedSeq: entry.seq ?? 0 }));
}

async function changeEntry(id: string, change: (entry: SiteEntry) => SiteEntry): Promise<void> {
  const tx = (await database()).transaction('entries', 'readwrite', { durability: 'strict' });
  const entry = await tx.store.get(id);
  const changed = entry === undefined ? null : change(entry);
  if (changed !== null) await tx.store.put(changed);
  await tx.done;
  if (changed !== null) tellSiteNews({ id, seq: changed.seq ?? 0 });
}

/** A site on the device: what opening it gave, the versions that wait for a choice, and the count of its writes. */
export type SiteRead = {
  readonly opened: Opened;
  readonly others: readonly OtherVersion[];
  readonly seq: number;
};

/** Reads a site and checks it as a file would be checked; null when there is none of that id. */
export async function readSite(id: string, on?: DeviceDatabase): Promise<SiteRead | null> {
  const tx = (on ?? (await database())).transaction(['sites', 'entries']);
  const [found, entry] = await Promise.all([
    tx.objectStore('sites').get(id),
    tx.objectStore('entries').get(id),
    tx.done,
  ]);
  if (found === undefined) return null;
  return { opened: openSiteValue(found.site), others: found.others ?? [], seq: entry?.seq ?? 0 };
}

/** What opening a site gave; null when there is none of that id. */
export async function loadSite(id: string): Promise<Opened | null> {
  return (await readSite(id))?.opened ?? null;
}

/** Whether a site of this id is on the device, in the bin too. */
export async function hasSite(id: string): Promise<boolean> {
  return (await (await database()).getKey('sites', id)) !== undefined;
}

/** Writes a site and its line in the list, both or neither, whatever is there. Resolves when the device has them. */
export async function saveSite(site: Site, now: number): Promise<void> {
  const tx = (await database()).transaction(SITE_STORES, 'readwrite', {
    durability: 'strict',
  });
  const seq = await putSite(tx, { site, now });
  await tx.done;
  tellSiteNews({ id: site.id, seq });
}

/** The lines of some sites in the list; null: the device has no such site. */
export async function readEntries(ids: readonly string[]): Promise<ReadonlyMap<string, SiteEntry | null>> {
  const store = (await database()).transaction('entries').store;
  const found = await Promise.all(ids.map(async (id) => [id, (await store.get(id)) ?? null] as const));
  return new Map(found);
}
