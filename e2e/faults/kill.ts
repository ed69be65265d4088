// Run: pnpm faults [seed [kills]], on a built app (pnpm build). A real browser is killed at random moments while edits go in; after each
// restart every edit that the app said is saved must be there.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import { seededRandom } from '../../tests/random/seeded';
import { serveApp } from '../src/servedApp';
import { type KillableBrowser, startKillable } from './killableBrowser';

const PORT = Number(process.env.FOOTMARK_FAULTS_PORT ?? 4393);
const seed = Number(process.argv[2] ?? 20_261_126);
const kills = Number(process.argv[3] ?? 100);
/** A new site after so many kills: lists stay as long as they are in practice. */
const KILLS_A_SITE = 10;
/** The browser lives for between so long and so long (ms) once edits go in. */
const [SHORTEST_MS, LONGEST_MS] = [100, 6000];

const random = seededRandom(seed);
const profile = mkdtempSync(join(tmpdir(), 'footmark-kill-'));
const app = await serveApp(PORT);
/** By site: the numbers of the readings that were typed and that the app has said are saved. */
const acknowledged = new Map<string, Set<number>>();
let [site, edits, lost] = [null as string | null, 0, 0];
let live: KillableBrowser | null = null;

console.log(`seed ${seed}, ${kills} kills`);
try {
  for (let kill = 1; kill <= kills; kill++) {
    live = await startKillable(profile);
    const context = live.browser.contexts()[0];
    if (context === undefined) throw new Error('the browser has no profile');
    const page = await context.newPage();
    if (site === null || kill % KILLS_A_SITE === 1) {
      // what the last site had is looked at before it is left
      if (site !== null) lost += await missing(page, site);
      site = await newSite(page);
    } else lost += await missing(page, site);
    const saved = acknowledged.get(site) ?? new Set<number>();
    acknowledged.set(site, saved);
    const dying = new Promise<void>((dead) => {
      const after = SHORTEST_MS + random() * (LONGEST_MS - SHORTEST_MS);
      setTimeout(() => void live?.kill().then(dead, dead), after);
    });
    edits += await editUntil(page, saved, dying);
    live = null;
    if (kill % 10 === 0)
      console.log(`${kill} kills, ${count()} acknowledged of ${edits} typed, ${lost} lost`);
  }
  live = await startKillable(profile);
  const page = await live.browser.contexts()[0]?.newPage();
  // at the end every site, once more
  if (page !== undefined) for (const id of acknowledged.keys()) lost += await missing(page, id);
} finally {
  await live?.kill();
  app.stop();
  rmSync(profile, { recursive: true, force: true });
}
console.log(`kills ${kills}, acknowledged ${count()}, lost ${lost}`);
process.exit(lost > 0 || count() === 0 ? 1 : 0);

function count(): number {
  return [...acknowledged.values()].reduce((sum, saved) => sum + saved.size, 0);
}

async function newSite(page: Page): Promise<string> {
  await page.goto(app.origin);
  await page.getByRole('button', { name: 'Open the sample site' }).click();
  await page.getByRole('main', { name: 'Plan' }).waitFor();
  await page.getByText('Saved on this device', { exact: true }).waitFor();
  const id = /#\/site\/(.+)$/.exec(page.url())?.[1];
  if (id === undefined) throw new Error(`no site at ${page.url()}`);
  await openRun(page);
  return id;
}

async function openRun(page: Page): Promise<void> {
  const card = page.getByRole('complementary', { name: 'Card' });
  await card.getByRole('tab', { name: /^Runs/ }).click();
  await card.getByRole('listitem').getByRole('button', { name: /^A/ }).first().click();
  await card.getByRole('form', { name: /^Reading A/ }).waitFor();
}

/** How many of the acknowledged readings of a site are not there; each is told. */
async function missing(page: Page, id: string): Promise<number> {
  await page.goto(`${app.origin}/#/site/${id}`);
  await page.getByRole('main', { name: 'Plan' }).waitFor();
  const stored = await page.evaluate(
    (of) =>
      new Promise<readonly number[]>((resolve, reject) => {
        const opening = indexedDB.open('footmark');
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const asked = opening.result.transaction('sites').objectStore('sites').get(of);
          asked.onerror = () => reject(asked.error);
          asked.onsuccess = () => {
            opening.result.close();
            const readings: readonly { readonly number: number }[] =
              asked.result?.site.runs[0].readings ?? [];
            resolve(readings.map(({ number }) => number));
          };
        };
      }),
    id,
  );
  const numbers = new Set(stored);
  const gone = [...(acknowledged.get(id) ?? [])].filter((number) => !numbers.has(number));
  for (const number of gone) console.log(`lost: reading A${number} in ${id}`);
  await openRun(page);
  return gone.length;
}

/** Types readings until the browser dies; those that the app calls saved go into `saved`. How many were typed. */
async function editUntil(page: Page, saved: Set<number>, dying: Promise<void>): Promise<number> {
  let [typed, dead] = [0, false];
  void dying.then(() => {
    dead = true;
  });
  try {
    await page.exposeFunction('acknowledge', (from: number, next: number) => {
      for (let number = from; number < next; number++) saved.add(number);
    });
    await page.evaluate(() => {
      // the form has the number of the next reading: all before it are in the site, and the line above says that this is on the device
      let told = Number(
        /\d+$/.exec(document.querySelector('form[aria-label^="Reading A"]')?.ariaLabel ?? '')?.[0],
      );
      new MutationObserver(() => {
        if (document.querySelector('header [role="status"]')?.textContent !== 'Saved on this device') return;
        const next = Number(
          /\d+$/.exec(document.querySelector('form[aria-label^="Reading A"]')?.ariaLabel ?? '')?.[0],
        );
        if (!(next > told)) return;
        void Reflect.get(window, 'acknowledge')(told, next);
        told = next;
      }).observe(document.body, { subtree: true, childList: true, characterData: true, attributes: true });
    });
    await page
      .getByRole('textbox', { name: /: counter/ })
      .first()
      .focus();
    const form = page.getByRole('form', { name: /^Reading A\d+$/ });
    let next = Number(/\d+$/.exec((await form.getAttribute('aria-label')) ?? '')?.[0]);
    while (!dead) {
      await page.keyboard.insertText((20 + random() * 40).toFixed(2));
      await page.keyboard.press('Enter');
      typed += 1;
      next += 1;
      // the field is empty again and has the focus
      await page.getByRole('form', { name: `Reading A${next}`, exact: true }).waitFor();
    }
  } catch {
    await dying; // whatever broke did so because the browser is gone
  }
  return typed;
}
