import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { type CDPSession, chromium, type Page } from '@playwright/test';
import { expect, test } from '../src/fixtures';
import { downloadSite } from '../src/HandOff';
import { Home } from '../src/Home';
import { type Pointer, pointerHand } from '../src/hand';
import { openSample } from '../src/openSample';
import { quietBrowser } from '../src/quietBrowser';
import { Screen } from '../src/Screen';
import { siteIn, textOf } from '../src/siteFile';

/** More than the sample site is, less than two of it. */
const SMALL_QUOTA_BYTES = 60_000;
const MEASURED_WITHIN_MS = 90_000;

async function browserOf(page: Page): Promise<CDPSession> {
  return await page.context().newCDPSession(page);
}

async function renameThe(screen: Screen, from: string, to: string): Promise<void> {
  await screen.goTo('Yard');
  await screen.hand.press(screen.row(from));
  await screen.fill('Name', to);
}

/** What the bar's own button hands out. */
async function downloadUnsaved(page: Page, hand: Pointer) {
  const coming = page.waitForEvent('download');
  await hand.press(page.getByRole('alert').getByRole('button', { name: 'Download the file' }));
  return siteIn(await textOf(await coming));
}

/** A browser that is told to let no page keep anything: neither databases nor locks nor a worker's. */
async function blockedBrowser(profile: string, baseURL: string) {
  await mkdir(join(profile, 'Default'), { recursive: true });
  const blocked = { profile: { default_content_setting_values: { cookies: 2 } } };
  await writeFile(join(profile, 'Default', 'Preferences'), JSON.stringify(blocked));
  return await chromium.launchPersistentContext(profile, {
    ...quietBrowser,
    baseURL,
    locale: 'en-US',
    viewport: { width: 1440, height: 900 },
  });
}

test('where storage is blocked one works all the same, is told at once, and takes the file along', async ({
  baseURL,
}, testInfo) => {
  const context = await blockedBrowser(testInfo.outputPath('profile'), baseURL ?? '');
  const page = await context.newPage();
  const hand = pointerHand(page, 'mouse');
  const [home, screen] = [new Home(page, hand), new Screen(page, hand)];
  await home.open();
  await expect(page.getByText('This browser keeps no sites: its storage is blocked or full.')).toBeVisible();
  await home.press('Open the sample site');
  await expect(page.getByRole('alert')).toContainText('is not saved. It is in this tab only');
  await expect(page.getByText('Saved on this device', { exact: true })).toHaveCount(0);
  await renameThe(screen, 'Power pole', 'Pole 17');
  const site = await downloadUnsaved(page, hand);
  expect(site.features.map((f) => f.name)).toContain('Pole 17');
  // it is still there after a look at the list, and nothing says that it is saved
  await hand.press(page.getByRole('button', { name: 'All sites' }));
  await expect(page.getByRole('alert')).toContainText('Rear-alley lateral is not saved');
  await context.close();
});

test('a full device says so, keeps what it had, and takes the rest once there is room', async ({
  page,
  hand,
}) => {
  const screen = await openSample(page, hand);
  await screen.saved();
  const cdp = await browserOf(page);
  const origin = new URL(page.url()).origin;
  await cdp.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: SMALL_QUOTA_BYTES });
  // the browser measures only now and then: what is written until then still fits
  await screen.goTo('Yard');
  const until = Date.now() + MEASURED_WITHIN_MS;
  for (let n = 0; Date.now() < until && (await page.getByRole('alert').count()) === 0; n++) {
    await hand.press(screen.row(n === 0 ? 'Power pole' : `Pole ${n}`));
    await screen.fill('Name', `Pole ${n + 1}`);
    await screen.press('Yard');
    await page.waitForTimeout(200);
  }
  await expect(page.getByRole('alert')).toContainText('is full. Free some space');
  await expect(page.getByText('Not saved on this device')).toBeVisible();
  const held = await downloadUnsaved(page, hand);
  await cdp.send('Storage.overrideQuotaForOrigin', { origin });
  await hand.press(page.getByRole('button', { name: 'Try again' }));
  await screen.saved();
  await expect(page.getByRole('alert')).toHaveCount(0);
  await page.reload();
  expect((await downloadSite(screen)).site).toEqual(held);
});

test('storage that the browser clears under an open site is filled again by the next edit', async ({
  page,
  hand,
}) => {
  const screen = await openSample(page, hand);
  await screen.saved();
  const cdp = await browserOf(page);
  const origin = new URL(page.url()).origin;
  await cdp.send('Storage.clearDataForOrigin', { origin, storageTypes: 'indexeddb' });
  await renameThe(screen, 'Power pole', 'Pole 17');
  await screen.saved();
  await page.reload();
  const { site } = await downloadSite(screen);
  expect(site.features.map((f) => f.name)).toContain('Pole 17');
  expect(site.runs).toHaveLength(2);
});

test('sites that the browser has cleared are missed aloud', async ({ page, hand }) => {
  const screen = await openSample(page, hand);
  await screen.saved();
  await hand.press(page.getByRole('button', { name: 'All sites' }));
  await expect(new Home(page, hand).sites).toHaveCount(1);
  const cdp = await browserOf(page);
  const origin = new URL(page.url()).origin;
  await cdp.send('Storage.clearDataForOrigin', { origin, storageTypes: 'indexeddb' });
  await page.reload();
  await expect(page.getByText('The sites that were on this device are gone')).toBeVisible();
});

test('two tabs on one site lose nothing of each other', async ({ page, hand, context }) => {
  const here = await openSample(page, hand);
  await renameThe(here, 'Power pole', 'Pole 17');
  await here.saved();
  const other = await context.newPage();
  await other.goto(page.url());
  await expect(other.getByRole('heading', { name: 'This site is open in another tab' })).toBeVisible();
  await other.getByRole('button', { name: 'Go on in this tab' }).click();
  await expect(page.getByRole('heading', { name: 'This site is open in another tab' })).toBeVisible();
  await expect(other.getByRole('button', { name: /^Pole 17/ })).toBeVisible();
});

test('two tabs of a browser without locks become one site', async ({ page, hand, context }) => {
  await context.addInitScript(() => {
    Reflect.deleteProperty(Navigator.prototype, 'locks');
  });
  const here = await openSample(page, hand);
  await here.saved();
  const other = await context.newPage();
  await other.goto(page.url());
  const there = new Screen(other, pointerHand(other, 'mouse'));
  await expect(other.getByRole('main', { name: 'Plan' })).toBeVisible();
  await renameThe(here, 'Power pole', 'Pole 17');
  await renameThe(there, 'Sycamore', 'Old sycamore');
  for (const screen of [here, there]) {
    await screen.press('Yard');
    await screen.saved();
    await expect(screen.row('Pole 17')).toBeVisible();
    await expect(screen.row('Old sycamore')).toBeVisible();
  }
});
