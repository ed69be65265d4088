import { practiceCorners, practicePlaces } from '../fixtures/practiceYard';
import { downloadSite } from '../src/HandOff';
import { Home } from '../src/Home';
import { expect, test } from '../src/practice';
import { featureNamed, placeOf } from '../src/siteFile';

const FOOT_M = 0.3048; // exact, by the definition of the international foot
const { pole, hydrant, meter, tree, shed } = practicePlaces;

test('several are chosen by a box and by shift, moved, turned, doubled and lined up', async ({
  page,
  hand,
  practice,
}) => {
  const { screen, plan } = practice;
  const things = (n: number) => screen.card.getByRole('region', { name: `${n} things`, exact: true });

  // a box around the shed and the hydrant, from bare ground; the meter with shift
  await page.keyboard.down('Shift');
  await plan.drag({ x: 25, y: 2 }, { x: 34.5, y: 19 });
  await expect(things(2)).toContainText('Shed, Hydrant');
  await plan.tap(meter);
  await expect(things(3)).toContainText('Shed, Hydrant, Meter');
  await plan.tap(meter);
  await expect(things(2)).toBeVisible();
  await page.keyboard.up('Shift');

  await screen.press('Move, turn, line up');
  await screen.write('East', `2'`);
  await screen.write('North', `-1' 6"`);
  await screen.press('Move by this');
  const moved = (await downloadSite(screen)).site;
  const by = { x: 2 * FOOT_M, y: -1.5 * FOOT_M };
  expect(placeOf(moved, 'Hydrant').x).toBeCloseTo(hydrant.x + by.x, 9);
  expect(placeOf(moved, 'Hydrant').y).toBeCloseTo(hydrant.y + by.y, 9);
  expect(placeOf(moved, 'Shed', 'c').x).toBeCloseTo(practiceCorners.shed[2][0] + by.x, 9);
  expect(placeOf(moved, 'Meter')).toEqual(meter);
  await screen.undo();

  // a quarter turn to the right about the shed's middle takes (dx, dy) to (dy, -dx)
  await screen.goTo('Yard');
  await hand.press(screen.row('Shed'));
  await screen.press('Move, turn');
  await screen.write('Turn about the middle', 'R 90');
  await screen.press('Turn by this');
  const turned = (await downloadSite(screen)).site;
  for (const [i, [x, y]] of practiceCorners.shed.entries()) {
    const at = placeOf(turned, 'Shed', 'abcd'.charAt(i));
    expect(at.x).toBeCloseTo(shed.x + (y - shed.y), 9);
    expect(at.y).toBeCloseTo(shed.y - (x - shed.x), 9);
  }
  await screen.undo();

  // a copy beside it, then both on one line
  await screen.goTo('Yard');
  await hand.press(screen.row('Hydrant'));
  await screen.press('Duplicate');
  const doubled = (await downloadSite(screen)).site;
  const hydrants = doubled.features.filter((f) => f.kind === 'hydrant');
  expect(hydrants).toHaveLength(2);
  expect(new Set(hydrants.map((f) => f.id)).size).toBe(2);
  const [own, copy] = hydrants.map((f) => f.vertices[0]?.spot);
  expect(own).toEqual({ by: 'finger', ...hydrant });
  expect(copy).not.toEqual(own);
  await screen.undo();
  await screen.goTo('Yard');
  await plan.tap(hydrant);
  await page.keyboard.down('Shift');
  await plan.tap(meter);
  await page.keyboard.up('Shift');
  await expect(things(2)).toContainText('Hydrant, Meter');
  await screen.press('Move, turn, line up');
  await screen.press('Line up east to west');
  const lined = (await downloadSite(screen)).site;
  expect(placeOf(lined, 'Hydrant').y).toBeCloseTo(placeOf(lined, 'Meter').y, 9);
  expect(placeOf(lined, 'Hydrant').x).toBeCloseTo(hydrant.x, 9);
  expect(placeOf(lined, 'Meter').x).toBeCloseTo(meter.x, 9);
});

test('what is locked stays, what is hidden is not hit, and both say so', async ({ page, hand, practice }) => {
  const { screen, yard, plan } = practice;
  await plan.tap(shed);
  await yard.isOpen('Shed');
  await screen.press('Lock');
  const locked = (await downloadSite(screen)).site;
  await screen.goTo('Yard');
  await plan.tap(shed);
  await yard.isOpen('Shed');
  await plan.drag(shed, { x: shed.x - 5, y: shed.y });
  await expect(screen.notice).toContainText('This is locked. Unlock it in its card to move it.');
  await page.keyboard.press('Delete');
  await expect(screen.notice).toContainText('What is locked stays as it is.');
  expect((await downloadSite(screen)).site).toEqual(locked);
  expect(featureNamed(locked, 'Shed').locked).toBe(true);

  // unlocked it moves with the hand, as far as the hand went
  await screen.goTo('Yard');
  await plan.tap(shed);
  await screen.press('Unlock');
  await plan.drag(shed, { x: shed.x - 5, y: shed.y });
  const dragged = (await downloadSite(screen)).site;
  expect(placeOf(dragged, 'Shed').x).toBeCloseTo(practiceCorners.shed[0][0] - 5, 1);
  await screen.undo();

  // what stands by its coordinates is held, and says by what
  await screen.goTo('Yard');
  const inHouse = { x: 12.5, y: 20 };
  await plan.tap(inHouse);
  await yard.isOpen('House');
  await plan.drag(inHouse, { x: inHouse.x + 4, y: inHouse.y });
  await expect(screen.notice).toContainText('held by its measurements');
  // nor do the arrows move it, and there is nothing to undo
  const undo = page.getByRole('banner').getByRole('button', { name: /^(Undo: |Nothing to undo)/ });
  const before = await undo.getAttribute('aria-label');
  await page.keyboard.press('ArrowRight');
  await expect(screen.notice).toContainText('held by its measurements');
  expect(await undo.getAttribute('aria-label')).toBe(before);
  await page.keyboard.press('Escape');

  // hidden: a press goes through it
  await plan.tap(tree);
  await yard.isOpen('Tree');
  await page.keyboard.press('Escape');
  const layers = page.getByRole('button', { name: 'Layers', exact: true });
  await hand.press(layers);
  await hand.mark(screen.card.getByRole('checkbox', { name: 'Trees and hedges' }));
  await screen.press('Close');
  await plan.tap(tree);
  await yard.isOpen('Yard');
  await hand.press(layers);
  await screen.press('Show everything');
  await screen.press('Close');
  await plan.tap(tree);
  await yard.isOpen('Tree');
});

test('things are copied from one site to another', async ({ page, hand, practice }) => {
  const { screen, plan } = practice;
  const home = new Home(page, hand);
  await plan.tap(shed);
  await page.keyboard.down('Shift');
  await plan.tap(pole);
  await page.keyboard.up('Shift');
  await expect(screen.card.getByRole('region', { name: '2 things' })).toBeVisible();
  await page.keyboard.press('Control+c');
  await expect(screen.notice).toContainText('Copied 2 things');
  const here = (await downloadSite(screen)).site;

  await hand.press(page.getByRole('button', { name: 'All sites' }));
  await home.press('New site');
  await page.keyboard.press('Control+v');
  await expect(screen.card.getByRole('region', { name: '2 things' })).toBeVisible();
  const there = (await downloadSite(screen)).site;
  const copies = (name: string) => ({ ...featureNamed(there, name), id: featureNamed(here, name).id });
  for (const name of ['Shed', 'Pole']) expect(copies(name)).toEqual(featureNamed(here, name));
  expect(there.features).toHaveLength(2);

  // the site that they came from is as it was
  await hand.press(page.getByRole('button', { name: 'All sites' }));
  await hand.press(home.sites.getByRole('button', { name: /^Practice yard/ }));
  expect((await downloadSite(screen)).site).toEqual(here);
});
