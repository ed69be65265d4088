// Run: npx tsx e2e/bench/saves.bench.ts, on a built app (pnpm build).
// A site of 200 kB is written with each edit: from when the page hands the edited site over to when its write is on the disk (durability "strict"), by
// the clocks of the page and of the worker that writes. Beside it in the same page: the same site put by itself into a store of a database with nothing
// else, also strict; and turned into JSON, which no storage does. And from the key that makes the edit, which is painted first.
import type { Page, Worker } from '@playwright/test';
import { quantile, tell } from '../../tests/bench/figures';
import { onBuiltApp } from './onBuiltApp';
import { grasp, middleOf, openFile } from './openCrowded';
import { siteOfSize } from './siteOfSize';

const SITE_BYTES = 200_000;
const EDITS = 200;
const WARM_UP = 20;
const GOAL_MS = 20;

await onBuiltApp(async ({ app, context }) => {
  const page = await context.newPage();
  await page.addInitScript(noteHanded);
  const site = siteOfSize(SITE_BYTES);
  const starting = page.waitForEvent('worker', (each) => each.url().includes('saveWorker'));
  await openFile(page, app.origin, site);
  const worker = await starting;
  await worker.evaluate(noteWritten);
  await grasp(page, await middleOf(page));
  const { saves, fromKeys } = await edit(page, worker);
  const bare = await bareWrites(page, site.id);
  const [save, put, text] = [median(saves), median(bare.puts), median(bare.texts)];
  console.log(
    `${Math.round(bare.bytes / 1000)} kB, ${saves.length} saves; bare put ${put.toFixed(1)} ms, JSON.stringify ${text.toFixed(2)} ms`,
  );
  const met = tell({
    name: 'an edited site of 200 kB is on the disk, median',
    value: save,
    unit: 'ms',
    goal: { under: GOAL_MS },
    ratio: { to: 'a bare put of the same into IndexedDB', times: save / put },
  });
  tell({
    name: 'an edited site of 200 kB is on the disk, 95 of 100',
    value: quantile(saves, 0.95),
    unit: 'ms',
    ratio: { to: 'its JSON.stringify, median', times: quantile(saves, 0.95) / text },
  });
  tell({
    name: 'an edited site of 200 kB is on the disk, from the key that makes the edit, median',
    value: median(fromKeys),
    unit: 'ms',
    ratio: { to: 'a bare put of the same into IndexedDB', times: median(fromKeys) / put },
  });
  return met;
});

function median(times: readonly number[]): number {
  return quantile(times, 0.5);
}

/** Milliseconds of each save, and from the key to its end; of those before the warm-up's end, none. */
async function edit(
  page: Page,
  worker: Worker,
): Promise<{ readonly saves: readonly number[]; readonly fromKeys: readonly number[] }> {
  const [handedBefore, writtenBefore] = [await timesOf(page, 'handed'), await timesOf(worker, 'written')];
  for (let n = 0; n < WARM_UP + EDITS; n++) {
    await page.keyboard.press(n % 2 === 0 ? 'ArrowRight' : 'ArrowLeft');
    await page.waitForFunction(
      (count) => Reflect.get(window, 'handed').length >= count,
      handedBefore.length + n + 1,
      { polling: 5 },
    );
    await page.getByText('Saved on this device', { exact: true }).waitFor();
  }
  const handed = (await timesOf(page, 'handed')).slice(handedBefore.length);
  const written = (await timesOf(worker, 'written')).slice(writtenBefore.length);
  if (handed.length !== written.length || written.length < WARM_UP + EDITS)
    throw new Error(`${handed.length} states were handed over and ${written.length} written`);
  const keys = await timesOf(page, 'keys');
  const since = (starts: readonly number[]) =>
    written.map((end, i) => end - (starts[i] ?? Number.NaN)).slice(WARM_UP);
  return { saves: since(handed), fromKeys: since(keys) };
}

async function timesOf(
  where: Pick<Page, 'evaluate'>,
  list: 'handed' | 'keys' | 'written',
): Promise<readonly number[]> {
  return await where.evaluate((name) => [...Reflect.get(globalThis, name)], list);
}

/** In the page: when each key was pressed and each edited site given to the worker, in milliseconds that all threads share. */
function noteHanded(): void {
  const [handed, keys]: [number[], number[]] = [[], []];
  Object.assign(window, { handed, keys });
  addEventListener('keydown', ({ timeStamp }) => keys.push(performance.timeOrigin + timeStamp), true);
  Worker.prototype.postMessage = new Proxy(Worker.prototype.postMessage, {
    apply(post, worker, given) {
      if ('save' in Object(given[0])) handed.push(performance.timeOrigin + performance.now());
      return Reflect.apply(post, worker, given);
    },
  });
}

/** In the worker: when each write was on the disk. */
function noteWritten(): void {
  const written: number[] = [];
  Object.assign(self, { written });
  IDBDatabase.prototype.transaction = new Proxy(IDBDatabase.prototype.transaction, {
    apply(begin, database, given) {
      const made: IDBTransaction = Reflect.apply(begin, database, given);
      if (given[1] === 'readwrite')
        made.addEventListener('complete', () => written.push(performance.timeOrigin + performance.now()));
      return made;
    },
  });
}

/** Milliseconds of bare writes of the stored site, and of turning it into text; what that text takes. */
async function bareWrites(page: Page, id: string) {
  return await page.evaluate(
    async ({ id, runs, warmUp }) => {
      const open = (name: string, upgrade?: (db: IDBDatabase) => void) =>
        new Promise<IDBDatabase>((resolve, reject) => {
          const opening = indexedDB.open(name);
          opening.onupgradeneeded = () => upgrade?.(opening.result);
          opening.onsuccess = () => resolve(opening.result);
          opening.onerror = () => reject(opening.error);
        });
      const from = await open('footmark');
      const stored = await new Promise<object>((resolve) => {
        const asked = from.transaction('sites').objectStore('sites').get(id);
        asked.onsuccess = () => resolve(asked.result);
      });
      const into = await open('bare', (db) => db.createObjectStore('one', { keyPath: 'id' }));
      const [puts, texts] = [[] as number[], [] as number[]];
      let length = 0;
      for (let n = 0; n < warmUp + runs; n++) {
        const began = performance.now();
        await new Promise<void>((resolve) => {
          const tx = into.transaction('one', 'readwrite', { durability: 'strict' });
          tx.objectStore('one').put(stored);
          tx.oncomplete = () => resolve();
        });
        const put = performance.now();
        length += JSON.stringify(stored).length;
        if (n >= warmUp) {
          puts.push(put - began);
          texts.push(performance.now() - put);
        }
      }
      return { puts, texts, bytes: length / (warmUp + runs) };
    },
    { id, runs: EDITS, warmUp: WARM_UP },
  );
}
