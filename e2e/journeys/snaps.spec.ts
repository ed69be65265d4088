import { practicePlaces } from '../fixtures/practiceYard';
import { downloadSite } from '../src/HandOff';
import type { Place } from '../src/Plan';
import { paintedWhile } from '../src/painted';
import { expect, test } from '../src/practice';
import { featureNamed, placeOf } from '../src/siteFile';

const FOOT_M = 0.3048; // exact, by the definition of the international foot
const { houseB, houseC, houseD } = practicePlaces;

test('presses are drawn to corners, middles, lines and their extension, and say why', async ({
  page,
  practice,
}) => {
  const { screen, yard, plan } = practice;
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

test('a length on the plan is tapped and changed, saying which end stays', async ({ page, practice }) => {
  const { screen, yard, plan } = practice;
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
