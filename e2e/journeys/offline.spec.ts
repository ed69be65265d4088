import { createHash } from 'node:crypto';
import { cp, mkdtemp, readFile, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { test as base, chromium, type Page } from '@playwright/test';
import { expect, listenTo, test } from '../src/fixtures';
import { Home } from '../src/Home';
import { pointerHand } from '../src/hand';
import { openSample } from '../src/openSample';
import { quietBrowser } from '../src/quietBrowser';
import { Screen, type Step } from '../src/Screen';
import { serveFolder } from '../src/staticServer';

const DIST = fileURLToPath(new URL('../../app/dist', import.meta.url));
const TERRACE = fileURLToPath(new URL('../../packages/site/samples/front-terrace.json', import.meta.url));

/** The first screen, once the whole program is on the device. */
async function kept(page: Page): Promise<void> {
  await expect(page.getByText('Works without a network')).toBeVisible({ timeout: 20_000 });
}

/** A copy of the built app that a test may change, behind a server of its own. */
async function ownServer() {
  const folder = await mkdtemp(join(tmpdir(), 'footmark-dist-'));
  await cp(DIST, folder, { recursive: true });
  return { folder, server: await serveFolder(folder) };
}

/** Makes another version of a built app: its page has another title, and the worker's list says so. */
async function makeNewer(folder: string, title: string): Promise<void> {
  const page = join(folder, 'index.html');
  const before = await readFile(page);
  const after = Buffer.from(before.toString().replace(/<title>.*<\/title>/, `<title>${title}</title>`));
  const hash = (content: Buffer) => `sha256-${createHash('sha256').update(content).digest('base64')}`;
  const worker = join(folder, 'sw.js');
  const script = await readFile(worker, 'utf8');
  const next = script
    .replace(hash(before), hash(after))
    .replace(/"version":"[0-9a-f]+"/, `"version":"${createHash('sha256').update(title).digest('hex')}"`);
  expect(next).not.toBe(script);
  await writeFile(page, after);
  await writeFile(worker, next);
}

test('after one visit a site opens by its address and every step works without a network', async ({
  page,
  context,
  hand,
}) => {
  await new Home(page, hand).open();
  await kept(page);
  const screen = await openSample(page, hand);
  await screen.saved();
  await context.setOffline(true);
  await page.reload();
  await expect(page.getByRole('heading', { name: 'Rear-alley lateral', level: 1 })).toBeVisible();
  for (const step of ['Line', 'Runs', 'Marks', 'Route', 'Hand-off', 'Yard'] satisfies Step[]) {
    await screen.goTo(step);
    await expect(
      screen.card.getByRole('region', { name: step === 'Yard' ? 'Yard' : /./ }).first(),
    ).toBeVisible();
  }

  // another tab, cold, on the first screen; a site with coordinates needs a part of the program that others do not
  const other = await context.newPage();
  const heard = listenTo(other, new URL(page.url()).origin);
  await other.goto('./');
  const home = new Home(other, hand);
  await expect(home.sites).toHaveCount(1);
  const dialog = other.waitForEvent('filechooser');
  await other.getByRole('button', { name: 'Open a site file', exact: true }).click();
  await (await dialog).setFiles(TERRACE);
  await expect(other.getByRole('main', { name: 'Plan' })).toBeVisible();
  const fromOther = new Screen(other, pointerHand(other, 'mouse'));
  await fromOther.goTo('Marks');
  await expect(fromOther.row('[A-Z]').first()).toBeVisible();
  expect(heard).toEqual([]);
});

base('a cold start with the server gone', async ({ locale }, testInfo) => {
  const { server } = await ownServer();
  const profile = testInfo.outputPath('profile');
  const open = () =>
    chromium.launchPersistentContext(profile, { ...quietBrowser, locale: locale ?? 'en-US' });
  const first = await open();
  const page = await first.newPage();
  await page.goto(server.origin);
  await kept(page);
  const screen = await openSample(page, pointerHand(page, 'mouse'));
  await screen.saved();
  const address = page.url();
  expect(address).toContain('#/site/');
  await first.close();
  await server.close();

  const second = await open();
  const again = await second.newPage();
  await again.goto(address);
  await expect(again.getByRole('heading', { name: 'Rear-alley lateral', level: 1 })).toBeVisible();
  await second.close();
});

base(
  'a newer version is offered, waits until it is taken, and leaves nothing of the old one behind',
  async ({ page }) => {
    const { folder, server } = await ownServer();
    const versions = () => page.evaluate(async () => (await caches.keys()).length);
    await page.goto(server.origin);
    await kept(page);
    await makeNewer(folder, 'A newer Footmark');
    // a browser looks for a newer worker when a page is opened
    await page.reload();
    const offer = page.getByText('A newer version is there.');
    await expect(offer).toBeVisible({ timeout: 20_000 });
    await expect(page).toHaveTitle('Footmark');
    await page.reload();
    await expect(offer).toBeVisible();
    await expect(page).toHaveTitle('Footmark');
    expect(await versions()).toBe(2);

    // it is not taken over work that is not saved
    await page.evaluate(() => {
      const unsaved = (event: Event) => event.preventDefault();
      window.addEventListener('beforeunload', unsaved);
      window.addEventListener('saved', () => window.removeEventListener('beforeunload', unsaved));
    });
    const take = page.getByRole('button', { name: 'Take it' });
    await take.click();
    await expect(page.getByText('Not yet: the last edit is still being saved.')).toBeVisible();
    await expect(page).toHaveTitle('Footmark');
    await page.evaluate(() => window.dispatchEvent(new Event('saved')));
    await take.click();
    await expect(page).toHaveTitle('A newer Footmark');
    await expect(page.getByText('Works without a network')).toBeVisible();
    await expect.poll(versions).toBe(1);
    await server.close();
  },
);

base('a file that is not as it was built does not become part of a version', async ({ page }) => {
  const { folder, server } = await ownServer();
  await writeFile(join(folder, 'third-party.txt'), 'something else');
  await page.goto(server.origin);
  await expect(page.getByRole('heading', { name: 'Footmark', level: 1 })).toBeVisible();
  await page.waitForFunction(async () => {
    const registration = await navigator.serviceWorker.getRegistration();
    return registration !== undefined && registration.installing === null;
  });
  expect(await page.evaluate(() => navigator.serviceWorker.controller)).toBeNull();
  await expect(page.getByText('Works without a network')).toHaveCount(0);
  await server.close();
});
