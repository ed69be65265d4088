import { writeFile } from 'node:fs/promises';
import { readCsv } from '../src/csv';
import { expect, test } from '../src/fixtures';
import { downloadSite, saveAs } from '../src/HandOff';
import { Home } from '../src/Home';
import { openSample } from '../src/openSample';
import { Screen } from '../src/Screen';
import { derivedOf, textOf } from '../src/siteFile';

test('the sample site shows its marks and its checks', async ({ page, hand }) => {
  const screen = await openSample(page, hand);
  await expect(page.getByRole('heading', { name: 'Rear-alley lateral', level: 1 })).toBeVisible();

  // what no camera has seen is listed, with what each run saw
  await screen.goTo('Runs');
  await screen.press('What the cameras saw');
  const runs = screen.card.getByRole('region', { name: 'Runs' });
  await expect(runs).toContainText('seen by A and B');
  await expect(runs).toContainText('not seen');

  await screen.goTo('Marks');
  await expect(screen.row('[AB]')).toHaveCount(15);
  await hand.press(screen.row('A8'));
  const mark = screen.card.getByRole('region', { name: 'Mark A8' });
  await expect(mark).toContainText('Roots');
  await expect(mark).toContainText('First tape');
  await screen.press('Next mark');
  await expect(screen.card.getByRole('region', { name: 'Mark A9' })).toContainText('Offset joint');

  const checks = page.getByRole('banner').getByRole('button', { name: /^Checks: / });
  await expect(checks).toHaveAccessibleName('Checks: 4 found');
  await hand.press(checks);
  const list = screen.card.getByRole('region', { name: 'Checks' });
  await expect(list.getByRole('button').filter({ hasText: 'Mark A1 lies under House' })).toBeVisible();
  await expect(list.getByRole('button').filter({ hasText: 'Alley manhole' })).toBeVisible();
  const slope = list.getByRole('button').filter({ hasText: 'the levels cannot tell' });
  await expect(slope).toContainText('From the first level to the last it does fall enough.');
  await hand.press(list.getByRole('button').filter({ hasText: 'Dogwood has no trunk diameter' }));
  await expect(screen.card.getByRole('region', { name: 'Dogwood' })).toBeVisible();
  await expect(screen.tab('Yard')).toHaveAttribute('aria-selected', 'true');

  // giving the diameter settles the check
  await screen.fill('Trunk diameter', '10');
  await expect(checks).toHaveAccessibleName('Checks: 3 found');
  await screen.undo();
  await expect(checks).toHaveAccessibleName('Checks: 4 found');
});

test('a downloaded site opens again as the same site', async ({ page, hand }, testInfo) => {
  const home = new Home(page, hand);
  const screen = new Screen(page, hand);
  await home.open();
  await home.press('Open the sample site');
  const first = await downloadSite(screen);
  expect(first.name).toBe('Rear-alley-lateral.json');
  expect(first.site.runs.flatMap((r) => r.readings)).toHaveLength(15);
  const file = testInfo.outputPath(first.name);
  await writeFile(file, first.text);

  await hand.press(page.getByRole('button', { name: 'All sites' }));
  await expect(home.sites).toHaveCount(1);
  await hand.press(page.getByRole('button', { name: 'Delete Rear-alley lateral' }));
  await expect(home.sites).toHaveCount(0);
  await home.openFile(file);
  await expect(page.getByRole('main', { name: 'Plan' })).toBeVisible();
  // the deleted one rests in the bin, so that this is another site with the same contents
  const again = await downloadSite(screen);
  expect({ ...again.site, id: first.site.id }).toEqual(first.site);

  const rows = readCsv(await textOf(await saveAs(screen, 'Marks as a table (CSV)')));
  const { marks } = derivedOf(first.site);
  expect(rows.map((r) => r.mark)).toEqual(marks.map((m) => m.label));
  for (const [i, { place }] of marks.entries())
    expect(Number(rows[i]?.station_ft)).toBeCloseTo((place?.station ?? Number.NaN) / 0.3048, 2);

  // while one is there, the same file opens as a second site
  await hand.press(page.getByRole('button', { name: 'All sites' }));
  await home.openFile(file);
  await expect(page.getByRole('main', { name: 'Plan' })).toBeVisible();
  const twin = (await downloadSite(screen)).site;
  expect({ ...twin, id: first.site.id }).toEqual(first.site);
  expect(twin.id).not.toBe(first.site.id);
  await hand.press(page.getByRole('button', { name: 'All sites' }));
  await expect(home.sites).toHaveCount(2);
});
