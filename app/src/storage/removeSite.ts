import { database } from './database';
import { tellSiteNews } from './siteNews';

/** Takes a site off this device for good with its versions, what a crew found there, and its pictures unless another site shows them too. */
export async function removeSite(id: string): Promise<void> {
  const tx = (await database()).transaction(
    ['sites', 'entries', 'files', 'answers', 'versions', 'stamps'],
    'readwrite',
  );
  const [sites, files] = [tx.objectStore('sites'), tx.objectStore('files')];
  const gone = JSON.stringify((await sites.get(id)) ?? null);
  await Promise.all([
    sites.delete(id),
    ...(['entries', 'stamps'] as const).map((store) => tx.objectStore(store).delete(id)),
    tx.objectStore('versions').delete(IDBKeyRange.bound([id], [id, []])),
  ]);
  const others: string[] = [];
  for (let at = await sites.openCursor(); at !== null; at = await at.continue())
    others.push(JSON.stringify(at.value));
  for (let at = await tx.objectStore('answers').openCursor(); at !== null; at = await at.continue()) {
    if (at.value.site === id) await at.delete();
    else others.push(JSON.stringify(at.value.answer));
  }
  for (let at = await files.openCursor(); at !== null; at = await at.continue()) {
    const named = `"${at.value.id}"`;
    const itsOwn = at.value.site === id || gone.includes(named);
    if (itsOwn && !others.some((text) => text.includes(named))) await at.delete();
  }
  await tx.done;
  tellSiteNews({ id, seq: null });
}
