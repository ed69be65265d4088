import type { Locator } from '@playwright/test';
import { Digs } from '../src/Digs';
import { expect, test } from '../src/fixtures';
import { downloadSite } from '../src/HandOff';
import { Home } from '../src/Home';
import { Screen } from '../src/Screen';

test('a trench beside the sycamore: what it takes, what it meets, and what makes it smaller', async ({
  page,
  hand,
}) => {
  const home = new Home(page, hand);
  const screen = new Screen(page, hand);
  const digs = new Digs(screen);
  await home.open();
  await home.press('Open the sample site');
  await screen.goTo('Route');
  await digs.trench('Lateral', '36', '60');
  const card = digs.dig('Trench on Lateral');

  const open =
    await test.step('nobody has looked at the soil: it is cut back as far as loose soil', async () => {
      // the bottom of 2 ft, and 1½ across for each foot down to each side
      const depth = Number(/to ([\d.]+) ft/.exec((await digs.result('Depth').textContent()) ?? '')?.[1]);
      const width = await digs.amount('Width at the top');
      expect(width).toBeCloseTo(2 + 2 * 1.5 * depth, 0);
      await digs.unfold('Look at');
      await expect(digs.finding('Nobody has said what the soil is')).toContainText('1926.652(b)(1)(i)');
      await expect(
        digs.finding(/takes \d+ % of the critical root zone of Sycamore, which is protected/),
      ).toContainText('University of Minnesota Extension');
      await expect(digs.finding(/lays bare .* of Gas service/)).toBeVisible();
      await expect(digs.finding('nobody goes in before its sides are cut back or held')).toContainText(
        'OSHA 29 CFR 1926 Subpart P',
      );
      return { width, taken: await takenOf(card) };
    });

  await test.step('each number opens to its rule', async () => {
    const width = digs.result('Width at the top');
    await expect(width.getByText('Nobody has looked: cut back 1.5 across to 1 down.')).toBeHidden();
    await hand.press(width.getByText('Width at the top'));
    await expect(width.getByText('Nobody has looked: cut back 1.5 across to 1 down.')).toBeVisible();
  });

  await test.step('medium soil is cut back less, loose soil more', async () => {
    await screen.press('Route');
    await digs.soil('Type B, medium');
    await hand.press(screen.row('Trench on Lateral'));
    const medium = await digs.amount('Width at the top');
    expect(medium).toBeLessThan(open.width);
    await expect(digs.finding('Nobody has said what the soil is')).toHaveCount(0);
    await screen.press('Route');
    await digs.soil('Type C, loose or wet');
    await hand.press(screen.row('Trench on Lateral'));
    expect(await digs.amount('Width at the top')).toBeGreaterThan(medium);
    expect(await takenOf(card)).toBe(open.taken);
  });

  await test.step('a shield makes it two feet wide, and much less of the root zone is taken', async () => {
    await screen.choose('Sides', 'Held by a shield or shoring');
    await expect(digs.result('Width at the top')).toContainText('2.0 ft');
    expect(await takenOf(card)).toBeLessThan(open.taken / 3);
    await expect(digs.finding('nobody goes in before its sides are cut back or held')).toContainText(
      'Set the shield before anyone goes in',
    );
    expect(await screen.undo()).toBe('Say how the sides are kept');
    expect(await takenOf(card)).toBe(open.taken);
    expect(await screen.redo()).toBe('Say how the sides are kept');
  });

  const { site } = await downloadSite(screen);
  expect(site.digging).toMatchObject({
    soil: 'c',
    digs: [{ is: 'trench', protection: 'shield', from: expect.closeTo(36 * 0.3048, 9) }],
  });
});

test('a rule changed on the site is said so wherever it asks', async ({ page, hand }) => {
  const home = new Home(page, hand);
  const screen = new Screen(page, hand);
  const digs = new Digs(screen);
  await home.open();
  await home.press('Open the sample site');
  await screen.goTo('Route');
  await digs.trench('Lateral', '36', '60');
  await screen.press('Route');
  const protection = digs.finding('nobody goes in before its sides are cut back or held');
  await expect(protection).toContainText('from 5.0 ft on');
  await expect(protection).not.toContainText('Changed on this site');

  await screen.press('Rules');
  await screen.press('Trenches and pits');
  await screen.fill('Sides are held or cut back from this depth on', '4');
  await expect(screen.card.getByText('Changed on this site.')).toBeVisible();
  await screen.fill('Changed by', 'R. Alder, foreman');
  await screen.press('Close');
  await expect(protection).toContainText('from 4.0 ft on');
  await expect(protection).toContainText('Changed on this site by R. Alder, foreman.');
});

test('a pit at a mark is as large as its hole; trees show every rule; undo takes the pit away', async ({
  page,
  hand,
}) => {
  const home = new Home(page, hand);
  const screen = new Screen(page, hand);
  const digs = new Digs(screen);
  await home.open();
  await home.press('Open the sample site');
  await screen.goTo('Route');
  await screen.choose('Pit at a mark', 'A8 Roots');
  const card = digs.dig('Pit at mark A8');
  await expect(card).toBeVisible();
  // it waits for the weighing of the runs, which says how large its hole is
  await expect(digs.result('Bottom')).toContainText(/[\d.]+ ft × [\d.]+ ft/);
  const [, width, length] =
    /([\d.]+) ft × ([\d.]+) ft/.exec((await digs.result('Bottom').textContent()) ?? '') ?? [];
  expect(Number(width)).toBeGreaterThan(2);
  await expect(card).toContainText(/Sycamore.*%/s);

  // said by hand it is as said
  await screen.fill('Length along the pipe', '4');
  await screen.fill('Width of the bottom', '3');
  await expect(digs.result('Bottom')).toContainText('3.0 ft × 4.0 ft');
  await screen.undo();
  await screen.undo();
  await expect(digs.result('Bottom')).toContainText(`${width} ft × ${length} ft`);

  await screen.press('Route');
  await screen.press(/^Trees: /);
  const rules = screen.card.getByRole('table').filter({ hasText: 'BS 5837' });
  await expect(rules.getByRole('rowheader')).toHaveCount(6);
  // 26 in of trunk: 26 ft by a foot an inch, 13 ft by six trunks
  await expect(rules.getByRole('row').filter({ hasText: 'Critical root radius' })).toContainText('26.0 ft');
  await expect(rules.getByRole('row').filter({ hasText: 'Six trunk diameters' })).toContainText('13.0 ft');

  await screen.press(/^How near things are/);
  await screen.choose('From', 'Lateral');
  await expect(digs.finding(/^Sycamore 1\.6 ft apart; its root zone decides\.$/)).toBeVisible();

  expect(await screen.undo()).toBe('Plan a dig');
  await expect(screen.row('Pit at mark A8')).toHaveCount(0);
});

test('a one-call ticket that ran out says so', async ({ page, hand }) => {
  const home = new Home(page, hand);
  const screen = new Screen(page, hand);
  await home.open();
  await home.press('Open the sample site');
  await screen.goTo('Route');
  await expect(screen.card).toContainText('No one-call ticket is kept here.');
  await screen.fill('Ticket number', '26-0417');
  await screen.card.getByLabel('Good until').fill('2020-01-02');
  await page.keyboard.press('Enter');
  await expect(screen.card).toContainText('The marks ran out on Jan 2, 2020.');
  // a whole day that nobody called on, and part of one, are told apart and not kept
  const called = screen.card.getByLabel('Called on');
  await called.fill('1926-04-18');
  await called.press('Enter');
  await expect(called).toHaveAccessibleDescription(/^This is before 1950\./);
  await called.fill('');
  await called.pressSequentially('04');
  await called.press('Enter');
  await expect(called).toHaveAccessibleDescription(/^This is not a whole day\./);
  const { site } = await downloadSite(screen);
  expect(site.digging.oneCall).toEqual({ ticket: '26-0417', validUntil: '2020-01-02' });
});

/** What a dig takes of the sycamore's root zone by the site's rule, in per cent. */
async function takenOf(card: Locator): Promise<number> {
  const fact = card.locator('dt', { hasText: /^Sycamore$/ }).locator('xpath=following-sibling::dd[1]');
  return Number(/(\d+) %/.exec((await fact.textContent()) ?? '')?.[1]);
}
