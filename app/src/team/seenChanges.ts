import type PouchDB from 'pouchdb-browser';

/** How far the replica has been taken in; kept in it in a document that is not replicated. */
const SEEN = '_local/footmark-seen';

export async function readSeen(replica: PouchDB): Promise<number> {
  const kept = await replica.get<{ readonly seq?: number }>(SEEN).catch(() => null);
  return kept?.seq ?? 0;
}

export async function writeSeen(replica: PouchDB, seq: number): Promise<void> {
  const old = await replica.get(SEEN).catch(() => null);
  await replica.put({ _id: SEEN, seq, ...(old === null ? {} : { _rev: old._rev }) });
}
