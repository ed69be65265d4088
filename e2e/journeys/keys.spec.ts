import { practicePlaces } from '../fixtures/practiceYard';
import { feetOf, PRINTED_TO_FT } from '../src/feetInches';
import { downloadSite } from '../src/HandOff';
import { pictureFiles } from '../src/pictureFiles';
import { expect, test } from '../src/practice';
import { placeOf } from '../src/siteFile';

const FOOT_M = 0.3048; // exact, by the definition of the international foot
const INCH_M = 0.0254;
const { houseA, houseB, houseC, pole, hydrant, meter, shed } = practicePlaces;

test('keys fit, nudge, measure, take back and put down; the history goes to any step', async ({
  page,
  hand,
  practice,
}) => {
  const { screen, yard, plan } = practice;
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

test('shift makes a nudge ten times as far, and a locked thing of a group stays', async ({
  page,
  practice,
}) => {
  const { screen, yard, plan } = practice;
  await plan.tap(pole);
  await yard.isOpen('Pole');
  await screen.press('Lock');
  await page.keyboard.down('Shift');
  await plan.tap(hydrant);
  await expect(screen.card.getByRole('region', { name: '2 things' })).toBeVisible();
  await page.keyboard.press('ArrowLeft');
  await page.keyboard.up('Shift');
  await expect(screen.notice).toContainText('What is locked stays as it is.');
  const nudged = (await downloadSite(screen)).site;
  expect(placeOf(nudged, 'Pole')).toEqual(pole);
  expect(placeOf(nudged, 'Hydrant').x).toBeCloseTo(hydrant.x - 10 * INCH_M, 9);
  expect(placeOf(nudged, 'Hydrant').y).toBe(hydrant.y);

  // by the card too
  await screen.goTo('Yard');
  await plan.tap(pole);
  await page.keyboard.down('Shift');
  await plan.tap(hydrant);
  await page.keyboard.up('Shift');
  await screen.press('Move, turn, line up');
  await expect(screen.card.getByText('What is locked stays as it is.')).toBeVisible();
  await screen.write('East', `1'`);
  await screen.press('Move by this');
  const moved = (await downloadSite(screen)).site;
  expect(placeOf(moved, 'Pole')).toEqual(pole);
  expect(placeOf(moved, 'Hydrant').x).toBeCloseTo(hydrant.x - 10 * INCH_M + FOOT_M, 9);
});

test('a picture is pasted as a picture, and what was copied as what it was', async ({
  page,
  context,
  practice,
}) => {
  const { screen, yard, plan } = practice;
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  const copyPicture = () =>
    page.evaluate(async (base64) => {
      const bytes = Uint8Array.from(atob(base64), (c) => c.charCodeAt(0));
      await navigator.clipboard.write([
        new ClipboardItem({ 'image/png': new Blob([bytes], { type: 'image/png' }) }),
      ]);
    }, pictureFiles.png(60, 40).toString('base64'));

  // what was copied last is what is pasted
  await copyPicture();
  await plan.tap(pole);
  await yard.isOpen('Pole');
  await page.keyboard.press('Control+c');
  await expect(screen.notice).toContainText('Copied Pole');
  await page.keyboard.press('Control+v');
  await yard.isOpen('Pole 2');

  await copyPicture();
  await page.keyboard.press('Control+v');
  await expect(screen.card.getByRole('region', { name: /^image/ })).toBeVisible();
  const { site } = await downloadSite(screen);
  expect(site.underlays).toHaveLength(1);
  expect(site.features.filter((f) => f.kind === 'pole').map((f) => f.name)).toEqual(['Pole', 'Pole 2']);
});
