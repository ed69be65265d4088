import { join, type StampedSite } from '@footmark/merge';
import { isDeleted, isMissing, type Replica } from './replica';
import { documentIdOf, stampedOf } from './teamDocument';

/** What the replica has of a site. `unreadable`: a document that does not open here, and is left alone. */
export type OnReplica =
  | {
      readonly is: 'site';
      /** All revisions that stand beside one another, as one. */
      readonly stamped: StampedSite;
      /** The revision that stands; what is written is put on it. */
      readonly rev: string;
      /** What the revision that stands has by itself. */
      readonly standing: StampedSite;
      /** Revisions beside it, which are in `stamped` and may be closed. */
      readonly beside: readonly string[];
    }
  | { readonly is: 'missing' | 'deleted' | 'unreadable' };

/** Reads a site's document with the revisions that others put beside it. One of these that does not open here is left alone. */
export async function readReplica(replica: Replica, site: string): Promise<OnReplica> {
  const id = documentIdOf(site);
  try {
    const winner = await replica.get(id, { conflicts: true });
    const standing = stampedOf(winner);
    if (standing === null) return { is: 'unreadable' };
    let stamped = standing;
    const beside: string[] = [];
    for (const rev of winner._conflicts ?? []) {
      const other = stampedOf(await replica.get(id, { rev }));
      if (other === null) continue;
      stamped = join(stamped, other);
      beside.push(rev);
    }
    return { is: 'site', stamped, rev: winner._rev, standing, beside };
  } catch (error) {
    if (!isMissing(error)) throw error;
    return { is: isDeleted(error) ? 'deleted' : 'missing' };
  }
}
