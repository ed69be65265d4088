import { expect, test } from '../src/fixtures';
import { downloadSite } from '../src/HandOff';
import { openSample } from '../src/openSample';

const NOON = new Date('2026-03-04T12:00:00-06:00');
/** Times have a narrow space in them. */
const NOON_SAID = /Mar 4, 2026, 12:00\sPM$/;

test('a site as it was before is looked at, brought back as one step, and the step undone', async ({
  page,
  hand,
}) => {
  await page.clock.install({ time: NOON });
  const screen = await openSample(page, hand);
  await screen.saved();
  const rename = async (from: string, to: string) => {
    await screen.goTo('Yard');
    await hand.press(screen.row(from));
    await screen.fill('Name', to);
    await screen.press('Yard');
    await screen.saved();
  };
  const before = (await downloadSite(screen)).site;
  await page.clock.setSystemTime(new Date('2026-03-04T12:30:00-06:00'));
  await rename('Power pole', 'Pole 17');
  await page.clock.setSystemTime(new Date('2026-03-04T12:31:00-06:00'));
  await rename('Sycamore', 'Old sycamore');
  const after = (await downloadSite(screen)).site;

  await hand.press(page.getByRole('button', { name: 'More', exact: true }));
  await hand.press(page.getByRole('menuitem', { name: 'History' }));
  const version = screen.card.getByRole('button', { name: NOON_SAID });
  await hand.press(version);
  const bar = page.getByRole('status').filter({ hasText: 'As it was on Mar 4, 2026' });
  await expect(bar).toContainText('Since then: 2 changed.');
  await hand.press(screen.card.getByRole('button', { name: 'Close' }));
  await screen.goTo('Yard');
  await expect(screen.row('Power pole')).toBeVisible();

  // it is there to be looked at, not to be changed
  await hand.press(screen.row('Power pole'));
  await screen.fill('Name', 'Another pole');
  await expect(screen.notice).toContainText('Another version of the site is shown');
  await screen.press('Yard');
  await hand.press(bar.getByRole('button', { name: 'Back to now' }));
  await expect(screen.row('Pole 17')).toBeVisible();

  await hand.press(page.getByRole('button', { name: 'More', exact: true }));
  await hand.press(page.getByRole('menuitem', { name: 'History' }));
  await hand.press(version);
  await hand.press(bar.getByRole('button', { name: 'Bring this back' }));
  await hand.press(screen.card.getByRole('button', { name: 'Close' }));
  await screen.saved();
  expect((await downloadSite(screen)).site).toEqual(before);
  expect(await screen.undo()).toMatch(NOON_SAID);
  await screen.saved();
  expect((await downloadSite(screen)).site).toEqual(after);
  await page.reload();
  expect((await downloadSite(screen)).site).toEqual(after);
});
