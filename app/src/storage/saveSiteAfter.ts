import type { OtherVersion } from '@footmark/merge';
import type { Site } from '@footmark/site';
import { type DeviceDatabase, database } from './database';
import { putSite, SITE_STORES } from './writeSite';

export type SaveAfter = {
  readonly site: Site;
  readonly others: readonly OtherVersion[];
  /** The count of writes that the caller has seen; null: it has seen none of that site. */
  readonly seq: number | null;
  /** Milliseconds since 1970. */
  readonly now: number;
};

/**
 * Writes a site if nobody has since `seq`, and gives the new count; null when somebody has, and nothing is written then. Resolves when
 * the device has it. Others are not told.
 */
export async function saveSiteAfter(
  { site, others, seq, now }: SaveAfter,
  on?: DeviceDatabase,
): Promise<number | null> {
  const tx = (on ?? (await database())).transaction(SITE_STORES, 'readwrite', { durability: 'strict' });
  const entry = await tx.objectStore('entries').get(site.id);
  if (entry !== undefined && (entry.seq ?? 0) !== seq) {
    await tx.done;
    return null;
  }
  const written = await putSite(tx, { site, others, now, entry });
  await tx.done;
  return written;
}
