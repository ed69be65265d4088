import { practice } from '../fixtures/practiceYard';
import { feetOf, PRINTED_TO_FT } from '../src/feetInches';
import { expect, test } from '../src/fixtures';
import { downloadSite } from '../src/HandOff';
import { Home } from '../src/Home';
import { learnScale, openPractice } from '../src/openPractice';
import { type Place, Plan } from '../src/Plan';
import { listenToCanvas, paintedWhile } from '../src/painted';
import { Screen } from '../src/Screen';
import { featureNamed, placeOf } from '../src/siteFile';
import { Yard } from '../src/Yard';

const FOOT_M = 0.3048; // exact, by the definition of the international foot
const INCH_M = 0.0254;

const place = ([x, y]: readonly [number, number]): Place => ({ x, y });
const [houseA, houseB, houseC, houseD] = practice.house.map(place) as [Place, Place, Place, Place];
const pole = place(practice.pole[0]);
const hydrant = place(practice.hydrant[0]);
const meter = place(practice.meter[0]);
const tree = place(practice.tree[0]);
const shed = { x: 29, y: 15.5 };

test.beforeEach(async ({ page, hand }) => {
  await listenToCanvas(page);
  await openPractice(new Home(page, hand));
});

test('presses are drawn to corners, middles, lines and their extension, and say why', async ({
  page,
  hand,
}) => {
  const screen = new Screen(page, hand);
  const yard = new Yard(screen);
  const plan = new Plan(page, hand);
  await learnScale(screen, plan);
  const px = 1 / plan.pxPerMetre;
  const beside = (p: Place, x: number, y: number): Place => ({ x: p.x + x * px, y: p.y + y * px });
  const reasons = async (at: Place) => {
    const { x, y } = plan.onScreen(at);
    return (await paintedWhile(page, () => page.mouse.move(x, y))).join('; ');
  };
  const middleDC = { x: (houseC.x + houseD.x) / 2, y: houseC.y };
  const onBC = { x: houseB.x, y: houseB.y - 2 };
  const pastB = { x: houseB.x + 3, y: houseB.y };

  await yard.draw('Boundary line');
  for (const [at, why] of [
    [beside(houseC, 6, -5), 'on House corner C'],
    [beside(middleDC, 5, -6), 'middle of House corner C to D'],
  ] as const) {
    expect(await reasons(at)).toContain(why);
    await plan.tap(at);
  }
  await screen.press('Finish');
  await yard.isOpen('Boundary line');
  await yard.back();

  // the first point of each is drawn to a line, and nothing else is near
  for (const [at, why] of [
    [beside(onBC, 5, 0), 'on House corner B to C'],
    [beside(pastB, 0, 5), 'in line with House corner A to B'],
  ] as const) {
    await yard.draw('Hydrant');
    expect(await reasons(at)).toContain(why);
    await plan.tap(at);
    await yard.back();
  }
  await page.keyboard.down('Alt');
  await yard.draw('Meter');
  const free = beside({ ...pastB, x: pastB.x + 2 }, 0, 5);
  await plan.tap(free);
  await page.keyboard.up('Alt');
  await yard.back();

  // a leg that comes square to a wall
  await yard.draw('Fence');
  await plan.tap({ x: 14.3, y: 12 });
  const square = { x: 14.3, y: houseD.y };
  expect(await reasons(beside(square, 4, 6))).toContain('square to House corner C to D');
  await plan.tap(beside(square, 4, 6));
  await screen.press('Finish');
  await yard.isOpen('Fence');

  const { site } = await downloadSite(screen);
  const house = featureNamed(site, 'House').id;
  const [first, second] = featureNamed(site, 'Boundary line').vertices;
  expect(first?.spot).toEqual({ by: 'at', point: { of: house, at: 'c' } });
  expect(second?.spot).toEqual({
    by: 'between',
    from: { of: house, at: 'c' },
    to: { of: house, at: 'd' },
    fraction: 0.5,
  });
  expect(placeOf(site, 'Hydrant 2').x).toBeCloseTo(houseB.x, 9);
  expect(placeOf(site, 'Hydrant 3').y).toBeCloseTo(houseB.y, 9);
  expect(placeOf(site, 'Meter 2').y).toBeCloseTo(free.y, 1);
  expect(placeOf(site, 'Meter 2').y, 'with Alt nothing pulls').not.toBeCloseTo(houseB.y, 2);
  expect(placeOf(site, 'Fence', 'b').y).toBeCloseTo(houseD.y, 9);
  expect(placeOf(site, 'Fence', 'b').x, 'straight above its first point').toBeCloseTo(
    placeOf(site, 'Fence').x,
    9,
  );
});

test('several are chosen by a box and by shift, moved, turned, doubled and lined up', async ({
  page,
  hand,
}) => {
  const screen = new Screen(page, hand);
  const plan = new Plan(page, hand);
  await learnScale(screen, plan);
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
  expect(placeOf(moved, 'Shed', 'c').x).toBeCloseTo(practice.shed[2][0] + by.x, 9);
  expect(placeOf(moved, 'Meter')).toEqual(meter);
  await screen.undo();

  // a quarter turn to the right about the shed's middle takes (dx, dy) to (dy, -dx)
  await screen.goTo('Yard');
  await hand.press(screen.row('Shed'));
  await screen.press('Move, turn');
  await screen.write('Turn about the middle', 'R 90');
  await screen.press('Turn by this');
  const turned = (await downloadSite(screen)).site;
  for (const [i, [x, y]] of practice.shed.entries()) {
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

test('what is locked stays, what is hidden is not hit, and both say so', async ({ page, hand }) => {
  const screen = new Screen(page, hand);
  const yard = new Yard(screen);
  const plan = new Plan(page, hand);
  await learnScale(screen, plan);

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
  expect(placeOf(dragged, 'Shed').x).toBeCloseTo(practice.shed[0][0] - 5, 1);
  await screen.undo();

  // what stands by its coordinates is held, and says by what
  await screen.goTo('Yard');
  const inHouse = { x: 12.5, y: 20 };
  await plan.tap(inHouse);
  await yard.isOpen('House');
  await plan.drag(inHouse, { x: inHouse.x + 4, y: inHouse.y });
  await expect(screen.notice).toContainText('held by its measurements');
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

test('things are copied from one site to another', async ({ page, hand }) => {
  const screen = new Screen(page, hand);
  const home = new Home(page, hand);
  const plan = new Plan(page, hand);
  await learnScale(screen, plan);
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

test('keys fit, nudge, measure, take back and put down; the history goes to any step', async ({
  page,
  hand,
}) => {
  const screen = new Screen(page, hand);
  const yard = new Yard(screen);
  const plan = new Plan(page, hand);
  await learnScale(screen, plan);
  const { keyboard } = page;

  // an inch to the east and up with an arrow
  await plan.tap(pole);
  await yard.isOpen('Pole');
  await keyboard.press('ArrowRight');
  await keyboard.press('ArrowRight');
  await keyboard.press('ArrowUp');
  const nudged = (await downloadSite(screen)).site;
  expect(placeOf(nudged, 'Pole').x).toBeCloseTo(pole.x + 2 * INCH_M, 9);
  expect(placeOf(nudged, 'Pole').y).toBeCloseTo(pole.y + INCH_M, 9);

  // the history takes all of it back at once, and some of it forth
  await hand.press(page.getByRole('banner').getByRole('button', { name: 'More' }));
  await hand.press(page.getByRole('menuitem', { name: 'History' }));
  const history = screen.card.getByRole('region', { name: 'History' });
  await hand.press(history.getByRole('button', { name: 'As it was opened' }));
  await expect(history.getByRole('button').filter({ hasText: 'undone' })).toHaveCount(3);
  await hand.press(history.getByRole('listitem').getByRole('button').nth(1));
  await screen.press('Close');
  const partly = (await downloadSite(screen)).site;
  expect(placeOf(partly, 'Pole').x).toBeCloseTo(pole.x + 2 * INCH_M, 9);
  expect(placeOf(partly, 'Pole').y).toBeCloseTo(pole.y, 9);

  // what is chosen fills the view: its middle is the view's; then the whole yard again, as it was fitted at first
  await screen.goTo('Yard');
  await plan.tap(shed);
  await keyboard.press('.');
  await keyboard.press('Escape');
  await plan.tapScreen(await plan.share(0.5, 0.5));
  await yard.isOpen('Shed');
  await keyboard.press('Escape');
  await plan.tap(hydrant);
  await expect(screen.card.getByRole('region', { name: 'Hydrant' })).toHaveCount(0);
  await keyboard.press('Escape');
  await keyboard.press('0');
  await plan.tap(hydrant);
  await yard.isOpen('Hydrant');
  await keyboard.press('Escape');

  // a length that is known: the house is 10 m wide and 8 m deep
  await keyboard.press('m');
  const measure = screen.card.getByRole('region', { name: 'Measure' });
  for (const corner of [houseA, houseB, houseC]) await plan.tap(corner);
  const lengths = measure.getByRole('definition').filter({ hasText: /^\d+′/ });
  await expect(lengths).toHaveCount(3);
  for (const [i, metres] of [10, 8, 18].entries()) {
    const read = feetOf((await lengths.nth(i).textContent()) ?? '');
    expect(Math.abs(read - metres / FOOT_M)).toBeLessThan(PRINTED_TO_FT);
  }
  await keyboard.press('Backspace');
  await expect(measure.getByRole('definition')).toHaveCount(1);
  await keyboard.press('Escape');
  await yard.isOpen('Yard');

  // the last point of a draft is taken back, and Escape puts the tool down without a trace
  const before = (await downloadSite(screen)).text;
  await screen.goTo('Yard');
  await yard.draw('Fence');
  for (const at of [meter, { x: 24, y: 8 }, { x: 30, y: 9 }]) await plan.tap(at);
  await keyboard.press('Backspace');
  await keyboard.press('Backspace');
  await expect(screen.button('Finish')).toBeDisabled();
  await keyboard.press('Escape');
  await yard.isOpen('Yard');
  expect((await downloadSite(screen)).text).toBe(before);

  await keyboard.press('?');
  const keys = screen.card.getByRole('region', { name: 'Keys' });
  await expect(keys).toContainText('Show the whole yard');
  await expect(keys).toContainText('Choose all in a box');
  await keyboard.press('?');
  await expect(keys).toHaveCount(0);
});

test('a length on the plan is tapped and changed, saying which end stays', async ({ page, hand }) => {
  const screen = new Screen(page, hand);
  const yard = new Yard(screen);
  const plan = new Plan(page, hand);
  await learnScale(screen, plan);

  // by two taps and two legs: a shed whose corners follow from one another
  await yard.draw('Deck');
  await plan.tap({ x: 6, y: 16 });
  await yard.leg('S 0 E', `20'`);
  await yard.leg('L 90', `16'`);
  await yard.leg('L 90', `20'`);
  await yard.finish();
  await yard.isOpen('Deck');
  const drawn = (await downloadSite(screen)).site;
  const corner = (site: typeof drawn, letter: string) => placeOf(site, 'Deck', letter);

  const openLength = async (site: typeof drawn, from: string, to: string) => {
    const [a, b] = [corner(site, from), corner(site, to)];
    const form = screen.card.getByRole('radiogroup', { name: /^Which end stays/ });
    // the label stands beside the middle of its side, on one of the two sides of it
    const [nx, ny] = [
      (b.y - a.y) / Math.hypot(b.x - a.x, b.y - a.y),
      -(b.x - a.x) / Math.hypot(b.x - a.x, b.y - a.y),
    ];
    for (const off of [12, -12, 18, -18, 26, -26]) {
      const m = off / plan.pxPerMetre;
      await plan.tap({ x: (a.x + b.x) / 2 + nx * m, y: (a.y + b.y) / 2 + ny * m });
      if (await form.isVisible()) return;
      await page.keyboard.press('Escape');
    }
    throw new Error(`no length is shown beside the side from ${from} to ${to}`);
  };

  await screen.goTo('Yard');
  await openLength(drawn, 'b', 'c');
  await expect(screen.field('Length')).toHaveValue(/^16/);
  await screen.write('Length', `18' 6"`);
  await screen.pick(/^Which end stays/, 'B');
  await screen.press('Change the length');
  const longer = (await downloadSite(screen)).site;
  for (const letter of ['a', 'b']) expect(corner(longer, letter)).toEqual(corner(drawn, letter));
  for (const letter of ['c', 'd']) {
    expect(corner(longer, letter).x).toBeCloseTo(corner(drawn, letter).x + 2.5 * FOOT_M, 6);
    expect(corner(longer, letter).y).toBeCloseTo(corner(drawn, letter).y, 6);
  }

  await screen.goTo('Yard');
  await openLength(longer, 'c', 'd');
  await screen.write('Length', `12'`);
  await screen.pick(/^Which end stays/, 'D');
  await screen.press('Change the length');
  const shorter = (await downloadSite(screen)).site;
  // what is square stays square: the other end moves, and the side across with it
  for (const [letter, north] of [
    ['a', 0],
    ['b', 8],
    ['c', 8],
    ['d', 0],
  ] as const) {
    expect(corner(shorter, letter).x).toBeCloseTo(corner(longer, letter).x, 6);
    expect(corner(shorter, letter).y).toBeCloseTo(corner(longer, letter).y + north * FOOT_M, 6);
  }
});
