import { expect, test } from '../src/fixtures';
import { downloadSite } from '../src/HandOff';
import { openSample } from '../src/openSample';
import { featureNamed } from '../src/siteFile';

const FOOT_M = 0.3048; // exact, by the definition of the international foot

test('what is typed on while the card follows an edit stays as it was typed, and is one edit', async ({
  page,
  hand,
}) => {
  const screen = await openSample(page, hand);
  await hand.press(screen.row('Sycamore'));
  const crown = screen.field('Crown spread');
  await screen.fill('Crown spread', '41 ft');
  // at once, before the card has followed
  await page.keyboard.press('Control+a');
  await page.keyboard.type('40.25');
  const undo = page.getByRole('banner').getByRole('button', { name: /^Undo: / });
  await expect(undo).toHaveAccessibleName('Undo: Change crown spread');
  await page.waitForTimeout(500);
  await expect(crown).toHaveValue('40.25');
  await page.keyboard.press('Enter');
  // the same again on leaving is none
  await page.keyboard.press('Tab');
  const { site } = await downloadSite(screen);
  expect(featureNamed(site, 'Sycamore').fields).toMatchObject({
    crownSpread: expect.closeTo(40.25 * FOOT_M, 9),
  });
  expect(await screen.undo()).toBe('Change crown spread');
  expect(await screen.undo()).toBe('Change crown spread');
  await expect(page.getByRole('banner').getByRole('button', { name: 'Nothing to undo' })).toBeVisible();

  // what is taken back shows in the field again
  await screen.goTo('Yard');
  await hand.press(screen.row('Sycamore'));
  await expect(crown).toHaveValue('48 ft');
  await screen.fill('Crown spread', '30 ft');
  await screen.undo();
  await expect(crown).toHaveValue('48 ft');
});
