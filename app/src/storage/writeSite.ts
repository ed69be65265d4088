import type { OtherVersion } from '@footmark/merge';
import type { Site } from '@footmark/site';
import type { IDBPTransaction } from 'idb';
import type { DeviceSchema } from './database';
import type { SiteEntry } from './records';
import { isVersionDue, versionsToDrop } from './versionSpacing';

/** The stores that hold sites; a transaction that writes one covers all of them. */
export const SITE_STORES = ['sites', 'entries', 'versions', 'stamps'] as const;

export type WritingSites = IDBPTransaction<DeviceSchema, typeof SITE_STORES, 'readwrite'>;

type Written = {
  readonly site: Site;
  /** Absent: those that wait there stay. */
  readonly others?: readonly OtherVersion[];
  readonly now: number;
  /** Its line in the list when the caller has read it in this transaction. */
  readonly entry?: SiteEntry | undefined;
  /** What else the line is to say. */
  readonly facts?: Partial<SiteEntry>;
};

/**
 * Writes a site and its line in the list within a transaction, and puts by what was there when that is due. A site in the bin comes out
 * of it unless `facts` says otherwise. Gives the count of its writes.
 */
export async function putSite(
  tx: WritingSites,
  { site, others, now, entry, facts }: Written,
): Promise<number> {
  const [sites, entries] = [tx.objectStore('sites'), tx.objectStore('entries')];
  const before = entry ?? (await entries.get(site.id));
  const seq = (before?.seq ?? 0) + 1;
  const due = before !== undefined && isVersionDue(before.versionedAt, now);
  const old = due || (others === undefined && before !== undefined) ? await sites.get(site.id) : undefined;
  if (due && old !== undefined)
    await putVersion(tx, { of: site.id, seq: seq - 1, at: before.savedAt, site: old.site });
  const waiting = others ?? old?.others ?? [];
  const { deletedAt: _, overdueSince: __, ...kept } = before ?? {};
  await Promise.all([
    sites.put({ id: site.id, site, ...(waiting.length === 0 ? {} : { others: waiting }) }),
    entries.put({
      ...kept,
      ...lineOf(site),
      savedAt: now,
      seq,
      ...(due || before === undefined ? { versionedAt: now } : {}),
      ...facts,
    }),
  ]);
  return seq;
}

function lineOf(site: Site): Pick<SiteEntry, 'id' | 'name' | 'address' | 'counts'> {
  return {
    id: site.id,
    name: site.name,
    address: site.address,
    counts: {
      features: site.features.length,
      runs: site.runs.length,
      readings: site.runs.reduce((n, r) => n + r.readings.length, 0),
    },
  };
}

async function putVersion(tx: WritingSites, version: DeviceSchema['versions']['value']): Promise<void> {
  const versions = tx.objectStore('versions');
  await versions.put(version);
  const keys = await versions.getAllKeys(IDBKeyRange.bound([version.of], [version.of, []]));
  const inOrder = keys.map(([of, seq, at]) => ({ of, seq, at }));
  for (const { of, seq, at } of versionsToDrop(inOrder)) await versions.delete([of, seq, at]);
}
