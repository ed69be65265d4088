import { Access } from '../src/Access';
import { Digs } from '../src/Digs';
import { expect, test } from '../src/fixtures';
import { focusUnseen } from '../src/focusSeen';
import { Home } from '../src/Home';
import { openSample } from '../src/openSample';
import { Screen, type Step } from '../src/Screen';
import { Yard } from '../src/Yard';

test.describe.configure({ timeout: 240_000 });

/** Opens every part of the card that is folded, those inside of others too. */
async function unfold(screen: Screen): Promise<void> {
  const folded = screen.card.getByRole('heading').getByRole('button', { expanded: false });
  for (let left = 30; left > 0 && (await folded.count()) > 0; left--) await folded.first().click();
}

/** Lays a leaf over the card by what the plan and the strip offer. */
async function leafFromMenu(screen: Screen, item: string): Promise<void> {
  await screen.page.getByRole('button', { name: 'More', exact: true }).click();
  await screen.page.getByRole('menuitem', { name: item, exact: true }).click();
}

test('the first screen, its bin, a file that is none, and what the program is', async ({ page, hand }) => {
  const access = new Access(page);
  const home = new Home(page, hand);
  await home.open();
  await access.look('no sites');
  await home.openFile({ name: 'no.json', mimeType: 'application/json', buffer: Buffer.from('{') });
  await access.look('a file that is none');
  await openSample(page, hand);
  await page.getByRole('button', { name: 'All sites' }).click();
  await expect(home.sites).toHaveCount(1);
  await access.look('one site');
  await page.getByRole('button', { name: /^Delete / }).click();
  await page.getByRole('button', { name: /^Bin/ }).click();
  await access.look('the bin');
  await page.getByRole('link', { name: 'About Footmark' }).click();
  await expect(page.getByRole('heading', { name: 'About Footmark' })).toBeVisible();
  await access.look('about');
  access.clear();
});

test('every step, with all that is folded in it open', async ({ page, hand }) => {
  const access = new Access(page);
  const screen = await openSample(page, hand);
  for (const step of ['Yard', 'Line', 'Runs', 'Marks', 'Route', 'Hand-off'] satisfies Step[]) {
    await screen.goTo(step);
    await unfold(screen);
    await access.look(step);
  }
  access.clear();
});

test('every step of a site with nothing in it', async ({ page, hand }) => {
  const access = new Access(page);
  const home = new Home(page, hand);
  await home.open();
  await home.press('New site');
  const screen = new Screen(page, hand);
  for (const step of ['Line', 'Runs', 'Marks', 'Route', 'Hand-off', 'Yard'] satisfies Step[]) {
    await screen.goTo(step);
    await access.look(step);
  }
  access.clear();
});

test('the card of each thing: tree, house, pipe, run with its readings, mark, trench', async ({
  page,
  hand,
}) => {
  const access = new Access(page);
  const screen = await openSample(page, hand);
  const open = async (step: Step, row: string) => {
    await screen.goTo(step);
    await hand.press(screen.row(row));
    await unfold(screen);
    await access.look(row);
  };
  await open('Yard', 'Sycamore');
  await open('Yard', 'House');
  await open('Line', 'Lateral');
  await open('Runs', 'A');
  await open('Marks', 'A8');
  await screen.goTo('Route');
  await new Digs(screen).trench('Lateral', '40', '60');
  await unfold(screen);
  await access.look('Trench');
  access.clear();
});

test('what lies over a card: checks, history, layers, keys, north, rules, fit, another way', async ({
  page,
  hand,
}) => {
  const access = new Access(page);
  const screen = await openSample(page, hand);
  await page
    .getByRole('banner')
    .getByRole('button', { name: /^Checks/ })
    .click();
  await access.look('checks');
  for (const item of ['History', 'Keys', 'Rules and their sources']) {
    await leafFromMenu(screen, item);
    await unfold(screen);
    await access.look(item);
  }
  await page.getByRole('button', { name: 'Layers', exact: true }).click();
  await access.look('layers');
  await page
    .getByRole('button', { name: /[Nn]orth/ })
    .first()
    .click();
  await unfold(screen);
  await access.look('north');
  await screen.goTo('Marks');
  await screen.press('See how it agrees');
  await unfold(screen);
  await access.look('fit');
  await screen.goTo('Route');
  await screen.press('Find another way');
  await unfold(screen);
  await access.look('another way');
  access.clear();
});

test('tools, menus and lists to choose from, the profile as a picture and as a table', async ({
  page,
  hand,
}) => {
  const access = new Access(page);
  const screen = await openSample(page, hand);
  await page.getByRole('button', { name: 'More', exact: true }).click();
  await expect(page.getByRole('menu')).toBeVisible();
  await access.look('menu');
  await page.keyboard.press('Escape');
  await new Yard(screen).draw('Tree');
  await access.look('drawing');
  await page.getByRole('button', { name: 'Cancel' }).first().click();
  await page.getByRole('button', { name: 'Measure', exact: true }).click();
  await access.look('measuring');
  await page.getByRole('button', { name: 'Measure', exact: true }).click();
  await screen.goTo('Route');
  await hand.press(screen.chooser('Trench along a pipe'));
  await expect(page.getByRole('listbox')).toBeVisible();
  await access.look('a list to choose from');
  await page.keyboard.press('Escape');
  const profile = page.getByRole('region', { name: 'Profile', exact: true });
  if (!(await profile.isVisible())) await page.getByRole('button', { name: 'Profile', exact: true }).click();
  await access.look('profile');
  const asTable = page.getByRole('button', { name: 'Profile as a table' });
  if (await asTable.isVisible()) {
    await asTable.click();
    await access.look('profile as a table');
  }
  access.clear();
});

test('the focus is seen wherever it goes, and nothing lies over it', async ({ page, hand }) => {
  const home = new Home(page, hand);
  const screen = new Screen(page, hand);
  // more sites than the screen is high
  for (let n = 0; n < 8; n++) {
    await home.open();
    await home.press('New site');
    await screen.saved();
  }
  await page.getByRole('button', { name: 'All sites' }).click();
  await expect(home.sites).toHaveCount(8);
  const onHome = await focusUnseen(page, 60);
  expect(onHome.unseen).toEqual([]);
  expect(onHome.stops).toBeGreaterThan(15);
  await openSample(page, hand);
  for (const step of ['Yard', 'Marks', 'Runs'] satisfies Step[]) {
    await screen.goTo(step);
    const { stops, unseen } = await focusUnseen(page, 60);
    expect(unseen, step).toEqual([]);
    // from the tab that was pressed on: through the card
    expect(stops, step).toBeGreaterThan(5);
  }
});

test('what is wrong would be found', async ({ page, hand }) => {
  await new Home(page, hand).open();
  await page.evaluate(() => {
    const field = document.createElement('input');
    const pale = document.createElement('p');
    pale.textContent = 'Hardly to be read';
    pale.style.color = '#ddd6c6';
    const small = ['a', 'b'].map((name) => {
      const button = document.createElement('button');
      button.textContent = name;
      button.style.cssText = 'width: 12px; height: 12px; padding: 0; font-size: 8px';
      return button;
    });
    const row = document.createElement('div');
    row.append(...small);
    document.querySelector('main')?.append(field, pale, row);
  });
  const access = new Access(page);
  await access.look('a field without a name, pale words and small buttons');
  for (const rule of [/: label /, /: color-contrast /, /: target-size /])
    expect(() => access.clear()).toThrow(rule);
});

test('nothing moves by itself for who has asked for less motion', async ({ page, hand }) => {
  const moving = () =>
    page.evaluate(() => {
      const main = document.querySelector('main');
      if (main === null) return -1;
      main.style.transition = 'opacity 10s';
      main.style.opacity = main.style.opacity === '0.5' ? '1' : '0.5';
      return document.getAnimations().length;
    });
  await new Home(page, hand).open();
  expect(await moving()).toBe(1);
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await page.reload();
  await expect(page.getByRole('heading', { name: 'Footmark', level: 1 })).toBeVisible();
  expect(await moving()).toBe(0);
});
