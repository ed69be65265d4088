import type { Locator } from '@playwright/test';
import { Digs } from '../src/Digs';
import { expect, test } from '../src/fixtures';
import { downloadSite } from '../src/HandOff';
import { openSample } from '../src/openSample';

test('a trench beside the sycamore: what it takes, what it meets, and what makes it smaller', async ({
  page,
  hand,
}) => {
  const screen = await openSample(page, hand);
  const digs = new Digs(screen);
  await screen.goTo('Route');
  await digs.trench('Lateral', '36', '60');
  const card = digs.dig('Trench on Lateral');

  const open =
    await test.step('nobody has looked at the soil: it is cut back as far as loose soil', async () => {
      // the bottom of 2 ft, and 1½ across for each foot down to each side
      let width = Number.NaN;
      // both of one state of the card: it follows what was typed a moment later
      await expect(async () => {
        const depth = Number(/to ([\d.]+) ft/.exec((await digs.result('Depth').textContent()) ?? '')?.[1]);
        width = await digs.amount('Width at the top');
        expect(width).toBeCloseTo(2 + 2 * 1.5 * depth, 0);
      }).toPass();
      await digs.unfold('Look at');
      const soil = await digs.open('Nobody has judged the soil');
      await expect(soil).toContainText('Nobody has said what the soil is');
      await expect(soil).toContainText('1926.652(b)(1)(i)');
      const roots = await digs.open(/Takes \d+ % of the root zone of Sycamore/);
      await expect(roots).toContainText(/This trench takes \d+ % of .* Sycamore, which is protected/);
      await expect(roots).toContainText('University of Minnesota Extension');
      await expect(digs.finding(/ft by hand near Gas service/)).toBeVisible();
      const sides = await digs.open('cut back or hold the sides');
      await expect(sides).toContainText('nobody goes in before its sides are cut back or held');
      await expect(sides).toContainText('OSHA 29 CFR 1926 Subpart P');
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
    await expect(digs.finding('Nobody has judged the soil')).toHaveCount(0);
    await screen.press('Route');
    await digs.soil('Type C, loose or wet');
    await hand.press(screen.row('Trench on Lateral'));
    expect(await digs.amount('Width at the top')).toBeGreaterThan(medium);
    await expect.poll(() => takenOf(card)).toBe(open.taken);
  });

  await test.step('a shield makes it two feet wide, and much less of the root zone is taken', async () => {
    await screen.choose('Sides', 'Held by a shield or shoring');
    await expect(digs.result('Width at the top')).toContainText('2.0 ft');
    await expect.poll(() => takenOf(card)).toBeLessThan(open.taken / 3);
    await expect(await digs.open('set the shield first')).toContainText(
      'Set the shield before anyone goes in',
    );
    expect(await screen.undo()).toBe('Say how the sides are kept');
    await expect.poll(() => takenOf(card)).toBe(open.taken);
    expect(await screen.redo()).toBe('Say how the sides are kept');
  });

  const { site } = await downloadSite(screen);
  expect(site.digging).toMatchObject({
    soil: 'c',
    digs: [{ is: 'trench', protection: 'shield', from: expect.closeTo(36 * 0.3048, 9) }],
  });
});

test('what must be settled is seen at once, whatever is in hand', async ({ page, hand }) => {
  const screen = await openSample(page, hand);
  const digs = new Digs(screen);
  await screen.goTo('Route');
  await digs.trench('Lateral', '60', '36');
  // typed the other way round, it is the same trench
  await expect(digs.dig('Trench on Lateral, 36.0 ft to 60.0 ft')).toBeVisible();
  await screen.fill('To station', '9999');
  await expect(screen.field('To station')).toHaveAccessibleDescription(/^The pipe is [\d.]+ ft long\.$/);
  await expect(digs.dig('Trench on Lateral, 36.0 ft to 60.0 ft')).toBeVisible();

  await screen.press('Route');
  await expect(screen.tab('Route')).toContainText(/\d must/);
  const must = screen.card.getByRole('region', { name: 'Must be settled before the dig' });
  for (const line of [/No one-call ticket/, /Gas service/, /cut back or hold the sides/]) {
    await expect(must.getByRole('listitem').filter({ hasText: line }).first()).toBeInViewport({ ratio: 0.9 });
  }
  // all else waits folded, and says what it comes to
  for (const fold of [/^One-call ticket: none kept$/, /^Trees: \d, up to \d+ % of a root zone taken$/])
    await expect(screen.button(fold)).toHaveAttribute('aria-expanded', 'false');
  await expect(must.getByRole('button').first()).toHaveAttribute('aria-expanded', 'false');
  const sides = await digs.open('cut back or hold the sides');
  await hand.press(sides.getByRole('button', { name: 'Open its card' }));
  await expect(digs.dig('Trench on Lateral, 36.0 ft to 60.0 ft')).toBeVisible();
});

test('a rule changed on the site is said so wherever it asks', async ({ page, hand }) => {
  const screen = await openSample(page, hand);
  const digs = new Digs(screen);
  await screen.goTo('Route');
  await digs.trench('Lateral', '36', '60');
  await screen.press('Route');
  const protection = await digs.open('cut back or hold the sides');
  await expect(protection).toContainText('from 5.0 ft on');
  await expect(protection).not.toContainText('Changed on this site');

  await screen.press('Rules');
  await screen.press('Trenches and pits');
  await screen.fill('Sides are held or cut back from this depth on', '4');
  await expect(screen.card.getByText('Changed on this site from 5.0 ft to 4.0 ft.')).toBeVisible();
  await screen.fill('Changed by', 'R. Alder, foreman');
  await screen.fill('Because', 'the ground is wet');
  await screen.press('Close');
  const changed = await digs.open('cut back or hold the sides');
  await expect(changed).toContainText('from 4.0 ft on');
  await expect(changed).toContainText(
    'Changed on this site by R. Alder, foreman from 5.0 ft to 4.0 ft: the ground is wet.',
  );
});

test('a pit at a mark is as large as its hole; trees show every rule; undo takes the pit away', async ({
  page,
  hand,
}) => {
  const screen = await openSample(page, hand);
  const digs = new Digs(screen);
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
  // six rules, and two that tell the roots that hold it up
  await expect(rules.getByRole('rowheader')).toHaveCount(8);
  // 26 in of trunk: 26 ft by a foot an inch, 13 ft by six trunks
  await expect(rules.getByRole('row').filter({ hasText: 'Critical root radius' })).toContainText('26.0 ft');
  await expect(rules.getByRole('row').filter({ hasText: 'Six trunk diameters' })).toContainText('13.0 ft');

  await screen.press(/^How near things are/);
  await screen.choose('From', 'Lateral');
  await expect(digs.near(/^Sycamore 1\.6 ft apart; its root zone decides\.$/)).toBeVisible();

  expect(await screen.undo()).toBe('Plan a dig');
  await expect(screen.row('Pit at mark A8')).toHaveCount(0);
});

test('a one-call ticket that ran out says so', async ({ page, hand }) => {
  const screen = await openSample(page, hand);
  await screen.goTo('Route');
  await screen.press('One-call ticket: none kept');
  await expect(screen.card).toContainText('No one-call ticket is kept here.');
  await screen.fill('Ticket number', '26-0417');
  await screen.card.getByLabel('Good until').fill('2020-01-02');
  await page.keyboard.press('Enter');
  await expect(screen.card).toContainText('The marks ran out on Jan 2, 2020.');
  await expect(screen.button('One-call ticket: ran out on Jan 2, 2020')).toBeVisible();
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
