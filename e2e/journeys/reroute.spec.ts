import { expect, test } from '../src/fixtures';
import { downloadSite } from '../src/HandOff';
import { keepPicture } from '../src/keepPicture';
import { openSample } from '../src/openSample';

test('the sample is rerouted around the sycamore: found, compared, taken and set out', async ({
  page,
  hand,
}) => {
  const screen = await openSample(page, hand);
  await screen.goTo('Route');
  await hand.press(screen.card.getByRole('button', { name: 'Find another way' }));
  const card = screen.card;

  await test.step('ways are found on both sides of the tree, beside the old pipe', async () => {
    await hand.press(card.getByRole('button', { name: 'Find ways' }));
    await expect(card.getByRole('button', { name: /New pipe in a trench/ }).first()).toBeVisible({
      timeout: 30_000,
    });
    expect(await card.getByRole('button', { name: /New pipe in a trench/ }).count()).toBeGreaterThan(1);
    await expect(card.getByRole('button', { name: /Old pipe dug up/ })).toBeVisible();
    await expect(card.getByRole('button', { name: /Old pipe burst or lined/ })).toBeVisible();
    await keepPicture(page, 'ways');
  });

  await test.step('they are laid side by side, with prices once there is a list', async () => {
    await hand.press(card.getByRole('button', { name: /^Prices/ }));
    await screen.fill('A foot of new pipe, laid', '40');
    await hand.press(card.getByRole('button', { name: /^Prices/ }));
    await hand.press(card.getByRole('button', { name: 'Side by side' }));
    const priced = card
      .getByRole('table')
      .getByRole('row', { name: /^Price/ })
      .getByRole('cell');
    const length = card
      .getByRole('table')
      .getByRole('row', { name: /^Length of pipe/ })
      .getByRole('cell');
    const feet = Number.parseFloat((await length.first().textContent()) ?? '');
    const price = Number.parseFloat(((await priced.first().textContent()) ?? '').replace(',', ''));
    expect(Math.abs(price - 40 * feet)).toBeLessThan(40 * 0.06);
    const table = card.getByRole('table');
    const roots = table.getByRole('row', { name: /^Root zones/ }).getByRole('cell');
    await expect(roots.first()).toContainText('of Sycamore');
    const shares = (await roots.allTextContents()).map((text) => Number(/(\d+) %/.exec(text)?.[1] ?? 0));
    // pits take less of the roots than a trench does
    expect(Math.min(...shares)).toBeLessThan(Math.max(...shares));
    await hand.press(card.getByRole('button', { name: 'Side by side' }));
  });

  await test.step('more room around the trunk is asked for, and the old answer says that it is old', async () => {
    await hand.press(card.getByRole('button', { name: /What it minds/ }));
    const sycamore = card.getByRole('listitem').filter({ hasText: /^Sycamore/ });
    await sycamore.getByLabel('By').fill('10 ft');
    await sycamore.getByLabel('By').press('Enter');
    await expect(card).toContainText('has changed since');
    await expect(card.getByRole('button', { name: 'Take this way' })).toHaveCount(0);
    await hand.press(card.getByRole('button', { name: 'Find ways' }));
    await expect(card).not.toContainText('has changed since', { timeout: 30_000 });
  });

  await test.step('one is taken: a proposed pipe with its trench, in one step of undo', async () => {
    await hand.press(card.getByRole('button', { name: /New pipe in a trench/ }).first());
    await hand.press(card.getByRole('button', { name: 'Take this way' }));
    await expect(screen.notice).toContainText('Planned.');
    await expect(card.getByRole('button', { name: 'Set it out' })).toBeVisible();
    await expect(card).toContainText('Its bends fit and it keeps its clearances.');
    const { site } = await downloadSite(screen);
    const taken = site.paths.find((p) => p.name === 'New drain');
    expect(taken?.state).toBe('proposed');
    expect(taken?.vertices.length).toBeGreaterThan(2);
    expect(site.digging.digs.some((d) => d.is === 'trench' && d.path === taken?.id)).toBe(true);
  });

  await test.step('it can be improved: what is found stands beside what is drawn', async () => {
    await screen.goTo('Line');
    await hand.press(card.getByRole('button', { name: /New drain/ }).first());
    await hand.press(card.getByRole('button', { name: 'Improve it' }));
    await expect(card.getByRole('button', { name: /As it is drawn/ })).toBeVisible({ timeout: 30_000 });
    await hand.press(card.getByRole('button', { name: 'Close' }));
  });

  await test.step('its points to set out are listed', async () => {
    await screen.goTo('Marks');
    await expect(card).toContainText('New drain');
  });
});

test('a new pipe may be brought to what else is there, and one search asked otherwise than the rules say', async ({
  page,
  hand,
}) => {
  const screen = await openSample(page, hand);
  await screen.goTo('Route');
  await hand.press(screen.card.getByRole('button', { name: 'Find another way' }));
  const card = screen.card;
  await keepPicture(page, 'asked');
  await screen.choose('Arrives', 'Anywhere on Lateral');
  await expect(screen.field('Past its station')).toBeVisible();
  await hand.press(card.getByRole('button', { name: /^Levels, fall and fittings/ }));
  await hand.mark(card.getByRole('checkbox', { name: /^1\/4 bend/ }));
  await screen.fill('Bends at most', '4');
  await keepPicture(page, 'asked-otherwise');
  await hand.press(card.getByRole('button', { name: 'Find ways' }));
  await expect(card.getByRole('button', { name: /New pipe in a trench/ }).first()).toBeVisible({
    timeout: 30_000,
  });
  await hand.press(card.getByRole('button', { name: /New pipe in a trench/ }).first());
  await expect(card).toContainText('Materials');
  await keepPicture(page, 'way-materials');
  await hand.press(card.getByRole('button', { name: 'Take this way' }));
  await expect(screen.notice).toContainText('Planned.');
  const { site } = await downloadSite(screen);
  const taken = site.paths.find((p) => p.name === 'New drain');
  const bends = taken?.vertices.flatMap((v) => v.bend ?? []) ?? [];
  expect(bends.length).toBeGreaterThan(0);
  expect(bends.length).toBeLessThanOrEqual(4);
  expect(Math.max(...bends)).toBeLessThan(Math.PI / 2 - 0.01);
  // it joins the pipe that it was brought to, past all that was seen in it
  const last = taken?.vertices.at(-1)?.spot;
  const lateral = site.paths.find((p) => p.name === 'Lateral');
  expect(last?.by === 'at' ? last.point.of : null).toBe(lateral?.id);
});
