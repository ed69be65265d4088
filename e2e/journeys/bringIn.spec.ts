import { expect, test } from '../src/fixtures';
import { downloadSite, saveAs } from '../src/HandOff';
import { Home } from '../src/Home';
import { keepPicture } from '../src/keepPicture';
import { openSample } from '../src/openSample';
import type { Screen } from '../src/Screen';
import { derivedOf } from '../src/siteFile';

const FOOT_M = 0.3048; // exact, by the definition of the international foot

async function bringIn(screen: Screen, name: string, text: string): Promise<void> {
  await screen.goTo('Hand-off');
  const fold = screen.card.getByRole('button', { name: /^Bring a file in/ });
  if ((await fold.getAttribute('aria-expanded')) === 'false') await screen.hand.press(fold);
  const dialog = screen.page.waitForEvent('filechooser');
  await screen.press('Choose a file');
  await (await dialog).setFiles({ name, mimeType: 'application/octet-stream', buffer: Buffer.from(text) });
}

test('points of a surveyor come in once it is said what their numbers are, and lie where they should', async ({
  page,
  hand,
}) => {
  const screen = await openSample(page, hand);
  await bringIn(screen, 'points.csv', '1,40.00,12.50,,IRON PIN\n2,60.00,12.50,,HUB\n');
  const form = screen.card.getByRole('region', { name: 'Bring in points.csv' });
  await expect(form).toContainText('IRON PIN');
  await expect(form.getByRole('button', { name: /^Bring in/ })).toHaveCount(0);
  for (const [question, entry] of [
    [/What are its coordinates/, 'This site’s own, x and y'],
    [/What are they counted in/, 'international feet (0.3048 m)'],
    [/Which column is which/, 'P, N, E, Z, D'],
  ] as const)
    await hand.choose(form.getByRole('button', { name: question }), entry);
  await expect(form.getByRole('img', { name: 'Where it would lie' })).toBeVisible();
  await hand.choose(form.getByRole('button', { name: /2 points$/ }), 'Reference point');
  await keepPicture(page, 'bring-in');
  await hand.press(form.getByRole('button', { name: 'Bring in 2 things' }));
  await expect(screen.notice).toContainText('Brought in: 2 things.');
  const { site } = await downloadSite(screen);
  const pin = site.features.find((f) => f.kind === 'reference-point' && /IRON PIN/.test(f.name));
  const at = derivedOf(site).points.get(`${pin?.id}/a`)?.at;
  expect(at?.x).toBeCloseTo(12.5 * FOOT_M, 6);
  expect(at?.y).toBeCloseTo(40 * FOOT_M, 6);
  expect(await screen.undo()).toBe('Bring a file in');
});

test('files that are harmful or cut come to nothing, in words', async ({ page, hand }) => {
  const screen = await openSample(page, hand);
  const before = await downloadSite(screen);
  for (const [name, text] of [
    ['bomb.kml', '<?xml version="1.0"?><!DOCTYPE k [<!ENTITY a "b">]><kml><Document>&a;</Document></kml>'],
    ['cut.geojson', '{"type":"FeatureCollection","features":[{"type":"Feature"'],
    ['notes.txt', 'nothing of this is a list of points'],
  ] as const) {
    await bringIn(screen, name, text);
    const form = screen.card.getByRole('region', { name: `Bring in ${name}` });
    await expect(form.getByRole('alert')).toBeVisible();
    await hand.press(form.getByRole('button', { name: 'Leave it' }));
  }
  expect((await downloadSite(screen)).text).toBe(before.text);
});

test('a site travels with its photos as one file, and opens elsewhere', async ({ page, hand, browser }) => {
  const screen = await openSample(page, hand);
  const { site } = await downloadSite(screen);
  const bundle = await saveAs(screen, 'The site with its photos (zip)');
  const path = await bundle.path();
  const context = await browser.newContext();
  const other = await context.newPage();
  const home = new Home(other, hand);
  await home.open();
  await other.getByTestId('site-file').setInputFiles({
    name: 'site.zip',
    mimeType: 'application/zip',
    buffer: await (await import('node:fs/promises')).readFile(path),
  });
  await expect(other.getByRole('main', { name: 'Plan' })).toBeVisible();
  await expect(other.getByRole('banner')).toContainText(site.name);
  await context.close();
});
