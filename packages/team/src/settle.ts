import { mergeStates, type SiteState } from '@footmark/merge';
import { isDeleted, isMissing, type Replica, type RevisedDocument } from './replica';
import { documentIdOf, documentOf, stateOfDocument } from './teamDocument';

/** What the replica has of a site. `unreadable`: a document that does not open here, and is left alone. */
export type OnReplica =
  | { readonly is: 'site'; readonly state: SiteState; readonly rev: string }
  | { readonly is: 'missing' | 'deleted' | 'unreadable' };

/** So often is begun anew when another writes at the same time. */
const MOST_TRIES = 8;

/** Reads a site's document; revisions that were put beside one another are merged first, and the document is one again. */
export async function settle(replica: Replica, site: string): Promise<OnReplica> {
  const id = documentIdOf(site);
  for (let tries = 0; tries < MOST_TRIES; tries++) {
    let winner: RevisedDocument;
    try {
      winner = await replica.get(id, { conflicts: true, revs: true });
    } catch (error) {
      if (!isMissing(error)) throw error;
      return { is: isDeleted(error) ? 'deleted' : 'missing' };
    }
    const state = stateOfDocument(winner);
    if (state === null) return { is: 'unreadable' };
    const losers = await readable(replica, id, winner._conflicts ?? []);
    if (losers.length === 0) return { is: 'site', state, rev: winner._rev };
    let merged = state;
    for (const { document, state: other } of losers)
      merged = mergeStates(await sharedState(replica, winner, document), merged, other);
    const [written] = await replica.bulkDocs([
      { ...documentOf(merged), _rev: winner._rev },
      ...losers.map(({ document }) => ({ _id: id, _rev: document._rev, _deleted: true })),
    ]);
    if (written?.rev !== undefined) return { is: 'site', state: merged, rev: written.rev };
  }
  throw new Error(`${id} is written faster than it can be settled`);
}

type Readable = { readonly document: RevisedDocument; readonly state: SiteState };

/** Those of the revisions that open here, in one order on every device. */
async function readable(replica: Replica, id: string, revs: readonly string[]): Promise<readonly Readable[]> {
  const found: Readable[] = [];
  for (const rev of revs.toSorted()) {
    const document = await replica.get(id, { rev, revs: true });
    const state = stateOfDocument(document);
    if (state !== null) found.push({ document, state });
  }
  return found;
}

/** The last state that both revisions came from; null when it is not kept here any more. */
async function sharedState(
  replica: Replica,
  a: RevisedDocument,
  b: RevisedDocument,
): Promise<SiteState | null> {
  const inB = new Set(revisionsOf(b));
  const rev = revisionsOf(a).find((each) => inB.has(each));
  if (rev === undefined) return null;
  try {
    return stateOfDocument(await replica.get(a._id, { rev }));
  } catch (error) {
    if (isMissing(error)) return null;
    throw error;
  }
}

function revisionsOf({ _revisions }: RevisedDocument): readonly string[] {
  return (_revisions?.ids ?? []).map((hash, i) => `${(_revisions?.start ?? 0) - i}-${hash}`);
}
