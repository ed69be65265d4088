import type { Page } from '@playwright/test';
import { newSite, type Path, type Run, type Site, writeSite } from '../../packages/site/src/index';
import { practiceYard } from '../fixtures/practiceYard';
import { misfitsOn } from '../src/fit';
import { expect, test } from '../src/fixtures';
import { downloadSite } from '../src/HandOff';
import { Home } from '../src/Home';
import { keepPicture } from '../src/keepPicture';
import { Plan } from '../src/Plan';
import { listenToCanvas, paintedWhile } from '../src/painted';
import { Screen } from '../src/Screen';

const FOOT_M = 0.3048;
const at = (x: number, y: number) => ({ by: 'coordinates', x, y }) as const;

/** A pipe from west to east, 30 m long, that falls 2 % between two levels; ground that falls 0.2 m; a run with three readings. */
const pipe: Path = {
  id: 'p',
  name: 'House drain',
  state: 'existing',
  bendRadius: 0,
  vertices: [
    {
      id: 'a',
      spot: { by: 'at', point: { of: 'co', at: 'a' } },
      level: { is: 'invert', level: 30, sigma: 0.01 },
    },
    { id: 'b', spot: at(20, 8) },
    { id: 'c', spot: at(35, 8), level: { is: 'invert', level: 29.4, sigma: 0.01 } },
  ],
  stretches: [{ from: 0, material: 'plastic', diameter: 0.1, slope: 0.02 }],
};

const run: Run = {
  id: 'r',
  letter: 'A',
  name: '',
  visit: null,
  entry: 'co',
  path: 'p',
  direction: 'with-flow',
  branches: [],
  zero: { at: 'in-pipe', counter: 0 },
  scale: { by: 'said', factor: 1 },
  resolution: 0.03,
  head: { length: 0, zeroed: 'lens' },
  note: '',
  readings: [5, 12, 25].map((counter, i) => ({
    id: `q${i}`,
    number: i + 1,
    counter,
    seen: 'roots',
    passed: true,
    note: '',
  })),
};

function levelledYard(): Site {
  const yard = practiceYard();
  const spotLevel = (id: string, x: number, level: number): Site['features'][number] => ({
    id,
    kind: 'spot-level',
    name: '',
    fields: { level },
    vertices: [{ id: 'a', spot: at(x, 8) }],
  });
  return {
    ...yard,
    name: 'Levelled yard',
    features: [
      ...yard.features,
      {
        id: 'co',
        kind: 'cleanout',
        name: 'House cleanout',
        fields: {},
        vertices: [{ id: 'a', spot: at(5, 8) }],
      },
      spotLevel('l1', 5, 32),
      spotLevel('l2', 20, 31.9),
      spotLevel('l3', 35, 31.8),
    ],
    paths: [pipe],
    runs: [run],
  };
}

async function openSiteFile(page: Page, home: Home, site: Site): Promise<void> {
  await home.open();
  await home.openFile({
    name: 'yard.json',
    mimeType: 'application/json',
    buffer: Buffer.from(writeSite(site)),
  });
  await expect(page.getByRole('main', { name: 'Plan' })).toBeVisible();
}

const profileOn = (page: Page) => page.getByRole('region', { name: 'Profile' });
const cursorOn = (page: Page) => page.getByRole('slider', { name: 'Place on the profile' });
const toggleOn = (page: Page) =>
  page.getByRole('main', { name: 'Plan' }).getByRole('button', { name: 'Profile', exact: true });

/** CSS pixels to a metre of the plan, by its own scale bar. */
async function planScale(page: Page): Promise<number> {
  const end = page.getByRole('main', { name: 'Plan' }).getByText(/^\d+ ft$/);
  const bar = await end.locator('xpath=..').boundingBox();
  return (bar?.width ?? 0) / (Number.parseFloat((await end.textContent()) ?? '') * FOOT_M);
}

test('a pipe with levels lies open in elevation, in step with the plan', async ({ page, hand }) => {
  await listenToCanvas(page);
  const home = new Home(page, hand);
  await openSiteFile(page, home, levelledYard());
  const profile = profileOn(page);
  await expect(profile.getByRole('heading', { name: 'House drain' })).toBeVisible();
  // 0.6 m in 30 m; 1.96 · √2 · 0.01 / 30 = 0.09 %
  await expect(profile).toContainText('On the whole 2.0 % ± 0.09 %: falls enough');
  await expect(profile).toContainText(/Heights (× [\d.]+|true to lengths)/);
  await keepPicture(page, 'profile');

  // with keys: 50 ft on, the invert is 30 m less 2 % of 15.24 m, 97.43 ft; the ground 31.8984 m, 104.65 ft
  const cursor = cursorOn(page);
  await cursor.focus();
  await page.keyboard.press('Home');
  for (let i = 0; i < 4; i++) await page.keyboard.press('Shift+ArrowRight');
  for (let i = 0; i < 9; i++) await page.keyboard.press('ArrowRight');
  const painted = await paintedWhile(page, () => page.keyboard.press('ArrowRight'));
  expect(painted).toContain('0+50');
  await expect(profile).toContainText(/Station\s*0\+50/);
  await expect(profile).toContainText(/Invert\s*97\.43 ± /);
  await expect(profile).toContainText(/Ground\s*104\.65 ± /);
  // 31.8984 − 29.6952 − 0.1 − 0.1 · 0.12/3.975 = 2.1002 m, 6 ft 10.68 in: to a quarter inch
  await expect(profile).toContainText(/Cover\s*6′ 10¾″ ± /);

  // the next mark by its key, and Enter opens it
  await page.keyboard.press('PageDown');
  await expect(profile).toContainText(/Station\s*0\+82/);
  await page.keyboard.press('Enter');
  await expect(page.getByRole('region', { name: 'Mark A3' })).toBeVisible();
  await expect(profile.locator('[data-chosen]')).toHaveAttribute('data-mark', 'A3');

  // a mark that is chosen elsewhere is brought out too
  await hand.press(page.getByRole('button', { name: 'Mark before' }));
  await expect(profile.locator('[data-chosen]')).toHaveAttribute('data-mark', 'A2');
});

test('a pointer on the pipe in the plan shows the place on the profile, and the other way round', async ({
  page,
  hand,
}) => {
  await listenToCanvas(page);
  const home = new Home(page, hand);
  await openSiteFile(page, home, levelledYard());
  await expect(cursorOn(page)).toBeVisible();
  const plan = new Plan(page, hand);
  // the boundary, 40 by 30 m, lies whole and in the middle of the view: the middle of the pipe 7 m below the view's own
  const middle = await plan.share(0.5, 0.5);
  const scale = await planScale(page);
  await page.mouse.move(middle.x, middle.y + 7 * scale);
  await expect(profileOn(page)).toContainText(/Station\s*0\+49/);
  await page.mouse.move(middle.x + 10 * scale, middle.y + 7 * scale);
  await expect(profileOn(page)).toContainText(/Station\s*0\+82/);
  await page.mouse.move(middle.x, middle.y);
  await expect(profileOn(page)).not.toContainText('Station');

  const box = await cursorOn(page).boundingBox();
  if (box === null) throw new Error('there is no chart');
  const painted = await paintedWhile(page, () =>
    page.mouse.move(box.x + box.width / 2, box.y + box.height / 2),
  );
  const shown = (await profileOn(page).textContent())?.match(/Station(\d\+\d\d)/)?.[1];
  expect(shown).toMatch(/^0\+[45]\d$/);
  expect(painted).toContain(shown);

  // a press on a mark of the profile chooses it
  const dot = await page.locator('[data-mark="A1"] circle').boundingBox();
  if (dot === null) throw new Error('A1 is not on the profile');
  await page.mouse.click(dot.x + dot.width / 2, dot.y + dot.height / 2);
  await expect(page.getByRole('region', { name: 'Mark A1' })).toBeVisible();
});

test('the profile as a table says the same and leads to its places', async ({ page, hand }) => {
  const home = new Home(page, hand);
  await openSiteFile(page, home, levelledYard());
  const profile = profileOn(page);
  await hand.press(profile.getByRole('button', { name: 'Profile as a table' }));
  const row = (name: string) => profile.getByRole('row').filter({ hasText: name });
  await expect(row('House cleanout')).toContainText('Point A, invert');
  await expect(row('House cleanout')).toContainText(/98\.43 ± /);
  await expect(row('House cleanout')).toContainText('2.0 % ± 0.09 %: falls enough');
  await expect(row('A2 Roots')).toContainText('0+39');
  await hand.press(row('A2 Roots').getByRole('button'));
  await expect(page.getByRole('region', { name: 'Mark A2' })).toBeVisible();
});

test('levels, a bend and a known length are typed at the pipe and show at once', async ({ page, hand }) => {
  const home = new Home(page, hand);
  const screen = new Screen(page, hand);
  const bare: Site = {
    ...levelledYard(),
    paths: [{ ...pipe, vertices: pipe.vertices.map(({ id, spot }) => ({ id, spot })) }],
    runs: [],
  };
  await openSiteFile(page, home, bare);
  // nothing is known of the depth yet: the profile is not in the way, and says what it wants when it is asked for
  await expect(profileOn(page)).toHaveCount(0);
  await screen.goTo('Line');
  await hand.press(screen.row('House drain'));
  await screen.press('Show its profile');
  const profile = profileOn(page);
  await expect(profile).toContainText('No level is known');

  await hand.press(screen.row('B East'));
  await screen.choose('How deep it lies here', 'Depth to the top of the pipe');
  await screen.fill('Depth to the top', `5' 6"`);
  await screen.fill('Give or take', '1 in');
  await screen.choose('The fitting turns it by', '22.5°');
  // 31.9 − 1.6764 − 0.1 − 0.1 · 0.12/3.975 = 30.1206 m
  await expect(profile).toContainText(/Invert\s*98\.82 ± /);
  await hand.press(screen.row('C East'));
  await screen.choose('How deep it lies here', 'Invert, as a level');
  await screen.fill('Invert level', '96');
  await expect(profile).toContainText(/Invert\s*96\.00 ± /);
  await screen.goTo('Line');
  // from there to 29.2608 m in 15 m
  await expect(profile).toContainText('On the whole 5.7 %');

  await hand.press(screen.row('House drain'));
  await screen.choose('From point', 'A');
  await screen.choose('To point', 'B');
  await screen.write('Length along the pipe', `49' 3"`);
  await screen.press('Add the length');
  await expect(screen.card.getByRole('listitem').filter({ hasText: 'A to B' })).toContainText('drawn 49′ 2');

  const { site } = await downloadSite(screen);
  const [path] = site.paths;
  const metres = (feet: number) => expect.closeTo(feet * FOOT_M, 9);
  expect(path?.vertices[1]).toMatchObject({
    level: { is: 'depth-to-top', depth: metres(5.5), sigma: metres(1 / 12) },
    bend: expect.closeTo(Math.PI / 8, 9),
  });
  expect(path?.vertices[2]?.level).toEqual({ is: 'invert', level: metres(96) });
  expect(path?.knownLengths).toMatchObject([{ from: 'a', to: 'b', length: metres(49.25) }]);

  // one step each, undone like any other
  await screen.goTo('Line');
  expect(await screen.undo()).toBe('Say a length of the pipe');
  expect(await screen.undo()).toBe('Change a level');
  await expect(profile).toContainText('One level is known');
});

test('a yard without a pipe has an empty profile that says so', async ({ page, hand }) => {
  const home = new Home(page, hand);
  const units = { length: 'm', diameter: 'mm', direction: 'azimuth' } as const;
  await openSiteFile(
    page,
    home,
    newSite({ id: 'bare', name: 'Bare', createdAt: '2026-01-02T03:04:05Z', units }),
  );
  await expect(profileOn(page)).toHaveCount(0);
  await hand.press(toggleOn(page));
  await expect(profileOn(page)).toContainText('Draw the pipe first');
  await hand.press(page.getByRole('button', { name: 'Close the profile' }));
  await expect(profileOn(page)).toHaveCount(0);
});

test.describe('on a phone', () => {
  test.use({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });

  test('the profile waits to be asked for, makes room, and leaves the plan its controls', async ({
    page,
    hand,
  }) => {
    const home = new Home(page, hand);
    const screen = new Screen(page, hand);
    await openSiteFile(page, home, levelledYard());
    await expect(profileOn(page)).toHaveCount(0);
    await hand.press(toggleOn(page));
    const chart = cursorOn(page);
    await expect(chart).toBeVisible();
    await keepPicture(page, 'profile-phone');
    expect(await misfitsOn(page)).toEqual([]);
    await expectApart(page);

    // a finger on it shows the place; on a mark it chooses the mark, whose card takes the chart's room
    const box = await chart.boundingBox();
    if (box === null) throw new Error('there is no chart');
    await hand.tap({ x: box.x + 60, y: box.y + box.height - 40 });
    await expect(profileOn(page)).toContainText('0+0');
    await screen.goTo('Marks');
    await hand.press(screen.row('A2'));
    await expect(chart).toBeHidden();
    await expect(profileOn(page)).toContainText('0+39');
    await expectApart(page);
    await hand.press(page.getByRole('button', { name: 'Lower the card for the profile' }));
    await expect(chart).toBeVisible();
    await expect(page.locator('[data-chosen]')).toHaveAttribute('data-mark', 'A2');

    // it stays as it was left while the site is open
    await screen.goTo('Line');
    await expect(profileOn(page)).toBeVisible();
    await hand.press(toggleOn(page));
    await expect(profileOn(page)).toHaveCount(0);
  });
});

/** The plan's buttons, the north arrow and the profile do not lie over each other. */
async function expectApart(page: Page): Promise<void> {
  const plan = page.getByRole('main', { name: 'Plan' });
  const boxes = await Promise.all(
    [...(await plan.getByRole('button').all()), profileOn(page)].map((one) => one.boundingBox()),
  );
  for (const [i, a] of boxes.entries())
    for (const b of boxes.slice(i + 1)) {
      if (a === null || b === null) continue;
      const apart =
        a.x + a.width <= b.x || b.x + b.width <= a.x || a.y + a.height <= b.y || b.y + b.height <= a.y;
      expect(apart, JSON.stringify([a, b])).toBe(true);
    }
}
