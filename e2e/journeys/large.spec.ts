import type { Page } from '@playwright/test';
import { expect, test } from '../src/fixtures';
import { Home } from '../src/Home';
import { lostText } from '../src/lostText';
import { openSample } from '../src/openSample';
import { Screen, type Step } from '../src/Screen';
import { walkWhatCame } from '../src/walks/cameWalk';
import { type CrewLanguage, walkCrew } from '../src/walks/crewWalk';
import { walkHandOff } from '../src/walks/handOffWalk';
import { walkVersions } from '../src/walks/versionsWalk';

test.describe.configure({ timeout: 180_000 });

/** Who reads large letters has set them in the browser: everything that is measured in them grows. */
const readsLarge = (page: Page) =>
  page.addInitScript(() => {
    const grow = () => document.documentElement?.style.setProperty('font-size', '200%');
    grow();
    document.addEventListener('DOMContentLoaded', grow);
  });

/** Nothing is lost now, and nobody has to scroll across to read. */
async function look(page: Page, at: string, lost: string[]): Promise<void> {
  lost.push(...(await lostText(page)).map((text) => `${at}: ${text}`));
  const wide = await page.evaluate(
    () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
  );
  if (wide > 0) lost.push(`${at}: the page is ${wide} px too wide`);
}

async function walk(page: Page, screen: Screen): Promise<readonly string[]> {
  const lost: string[] = [];
  await look(page, 'site', lost);
  for (const step of ['Line', 'Runs', 'Marks', 'Route', 'Hand-off', 'Yard'] satisfies Step[]) {
    await screen.goTo(step);
    await look(page, step, lost);
  }
  for (const [step, row] of [
    ['Yard', 'Sycamore'],
    ['Line', 'Lateral'],
    ['Runs', 'A'],
    ['Marks', 'A8'],
  ] as const) {
    await screen.goTo(step);
    await screen.row(row).first().click();
    await look(page, row, lost);
  }
  return lost;
}

test('letters of twice the size lose nothing', async ({ page, hand }) => {
  await readsLarge(page);
  const home = new Home(page, hand);
  await home.open();
  const lost: string[] = [];
  await look(page, 'first screen', lost);
  const screen = await openSample(page, hand);
  lost.push(...(await walk(page, screen)));
  expect(lost).toEqual([]);
});

/** The narrowest page that has to do without scrolling across: WCAG 2.2, 1.4.10. */
const NARROWEST = { width: 320, height: 640 };

test('a page zoomed to twice its size loses nothing, nor does the narrowest one', async ({
  page,
  hand,
}, testInfo) => {
  const size = page.viewportSize();
  if (size === null) throw new Error('every project has a viewport');
  // a browser's zoom leaves a page half as many pixels of its own each way
  const zoomed = { width: Math.round(size.width / 2), height: Math.round(size.height / 2) };
  await page.setViewportSize(testInfo.project.name === 'phone' ? NARROWEST : zoomed);
  const home = new Home(page, hand);
  await home.open();
  const lost: string[] = [];
  await look(page, 'first screen', lost);
  await home.press('Open the sample site');
  lost.push(...(await walk(page, new Screen(page, hand))));
  expect(lost).toEqual([]);
});

/** Looks as who reads large letters and has asked for less motion: what is lost, and what moves by itself all the same. */
function looking(page: Page, lost: string[]) {
  return async (at: string) => {
    const moving = await page.evaluate(() => document.getAnimations().length);
    if (moving > 0) lost.push(`${at}: ${moving} things move`);
    await look(page, at, lost);
  };
}

for (const language of ['English', 'Español'] satisfies CrewLanguage[])
  test(`letters of twice the size lose nothing of the crew view, ${language}`, async ({ page, hand }) => {
    await readsLarge(page);
    await page.emulateMedia({ reducedMotion: 'reduce' });
    const lost: string[] = [];
    const screen = await openSample(page, hand);
    await screen.saved();
    await hand.press(page.getByRole('button', { name: 'All sites' }));
    await walkCrew(page, hand, 'Rear-alley lateral', language, looking(page, lost));
    expect(lost).toEqual([]);
  });

test('nor of what is handed off and comes in, nor of what was before', async ({ page, hand }) => {
  await readsLarge(page);
  await page.emulateMedia({ reducedMotion: 'reduce' });
  const lost: string[] = [];
  await walkVersions(page, hand, looking(page, lost));
  const screen = new Screen(page, hand);
  await hand.press(screen.card.getByRole('button', { name: 'Close' }));
  await walkHandOff(screen, looking(page, lost));
  await walkWhatCame(screen, ['English', 'Español'], looking(page, lost));
  expect(lost).toEqual([]);
});
