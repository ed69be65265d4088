import type { Page } from '@playwright/test';
import type { Site } from '../../packages/site/src/index';

/** Sites a write of many puts at once: what goes over to the page in one go. */
const LOT = 50;

/**
 * Puts copies of a site on the device, each with an id and a name of its own, in the stores and the shape that the app writes. The app has been opened
 * before, so that its database is there; what shows a list has to be opened again.
 */
export async function fillDevice(page: Page, site: Site, count: number): Promise<void> {
  for (let from = 0; from < count; from += LOT)
    await page.evaluate(
      async ({ site, from, to, features }) => {
        const db = await new Promise<IDBDatabase>((resolve, reject) => {
          const opening = indexedDB.open('footmark');
          opening.onsuccess = () => resolve(opening.result);
          opening.onerror = () => reject(opening.error);
        });
        const tx = db.transaction(['sites', 'entries'], 'readwrite');
        for (let n = from; n < to; n++) {
          const [id, name] = [`bench-${n}`, `Yard ${n}`];
          tx.objectStore('sites').put({ id, site: { ...site, id, name } });
          tx.objectStore('entries').put({
            id,
            name,
            address: `${n} Example Street`,
            savedAt: Date.UTC(2026, 0, 1) + n * 60_000,
            counts: { features, runs: 0, readings: 0 },
            seq: 1,
          });
        }
        await new Promise<void>((resolve, reject) => {
          tx.oncomplete = () => resolve();
          tx.onabort = () => reject(tx.error);
        });
        db.close();
      },
      { site, from, to: Math.min(count, from + LOT), features: site.features.length },
    );
}
