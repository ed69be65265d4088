import type { Locator } from '@playwright/test';
import { readCsv } from '../src/csv';
import { PRINTED_TO_FT } from '../src/feetInches';
import { misfitsOn } from '../src/fit';
import { expect, test } from '../src/fixtures';
import { saveAs } from '../src/HandOff';
import { Home } from '../src/Home';
import { keepPicture } from '../src/keepPicture';
import { factOn, feetOn, tapesOn } from '../src/Marks';
import { ft, type MeasuredThing, turn } from '../src/measuredYard';
import { Screen } from '../src/Screen';
import { textOf } from '../src/siteFile';
import { Yard } from '../src/Yard';

const post = (name: string, east: number, north: number): MeasuredThing => ({
  kind: 'Reference point',
  name,
  shape: 'point',
  points: [{ by: 'coordinates', east: ft(east), north: ft(north) }],
});

/** Posts about the bend at (20, 40): 15 ft (9-12-15) and 20 ft (12-16-20) square to it, and 13 ft (5-12-13) to check. */
const POSTS = [post('Gate post', 29, 52), post('Pole', 36, 28), post('Corner stone', 15, 28)];

/** 40 ft to the north, and by a turn of 45° to the right 30 ft on. */
const NEW_LINE: MeasuredThing = {
  kind: 'Pipe',
  name: 'New line',
  shape: 'line',
  points: [
    { by: 'coordinates', east: ft(20), north: ft(0) },
    { by: 'coordinates', east: ft(20), north: ft(40) },
    { by: 'leg', direction: turn('R', 45), length: ft(30) },
  ],
};

test('a proposed pipe is set out: what is painted, its tapes, its fitting and its depth', async ({
  page,
  hand,
}) => {
  const home = new Home(page, hand);
  const screen = new Screen(page, hand);
  const yard = new Yard(screen);
  await home.open();
  await home.press('New site');
  for (const thing of POSTS) {
    await yard.enter(thing);
    await yard.back();
  }
  await yard.enter(NEW_LINE);

  await test.step('a pipe that is in the ground is not set out', async () => {
    await expect(screen.button('Set it out')).toHaveCount(0);
    await screen.choose('State', 'Proposed');
    await expect(screen.button('Set it out')).toBeVisible();
  });

  await test.step('the Marks step has its list, with the flow', async () => {
    await hand.press(screen.row('A East'));
    await screen.choose('How deep it lies here', 'Depth to the invert');
    await screen.fill('Depth to the invert', "4'");
    await expect(screen.tab('Marks')).toContainText('set out');
    await screen.goTo('Marks');
    await expect(screen.button('Set out New line: 5 points')).toBeVisible();
    const rows = screen.card.getByRole('listitem');
    await expect(rows).toHaveText([
      /^NL-1Start/,
      /^NL-2Straight on/,
      /^NL-31\/8 bend, 45° right/,
      /^NL-4/,
      /^NL-5End/,
    ]);
    await expect(rows.nth(0)).toContainText('4′');
    expect(await misfitsOn(page)).toEqual([]);
    await keepPicture(page, 'set-out-list');
  });

  await test.step('a point opens to its tapes, which are those of right triangles', async () => {
    await hand.press(screen.row('NL-3'));
    const card = pointCard(screen, 'NL-3');
    await expect(card).toContainText('the bend begins 3¾″ before it');
    const tapes = await tapesOn(card);
    expect(tapes.map((tape) => tape.from)).toEqual(['Gate post', 'Pole', 'Corner stone']);
    for (const [i, feet] of [15, 20, 13].entries()) {
      expect(Math.abs((tapes[i]?.feet ?? 0) - feet)).toBeLessThan(PRINTED_TO_FT);
    }
    await expect(card).toContainText('The tapes cross at 90°');
    expect(await misfitsOn(page)).toEqual([]);
    await keepPicture(page, 'set-out-point');
  });

  await test.step('the next point is one tap on, as far away as it was drawn', async () => {
    await screen.press('Next point');
    await screen.press('Next point');
    const end = pointCard(screen, 'NL-5');
    await expect(end).toBeVisible();
    await expect(factOn(end, 'Depth to invert')).toContainText('taken as even');
    // a bend of 9 in radius is 0.3873 in shorter than its corner: 2T − L of any route-surveying text
    expect(Math.abs((await feetOn(end, 'Along the pipe')) - (70 - 0.3873 / 12))).toBeLessThan(0.05);
    await expect(screen.button('Next point')).toBeDisabled();
    await screen.press('Marks');
    await expect(screen.row('NL-1')).toBeVisible();
  });

  await test.step('it goes out as a table', async () => {
    const download = await saveAs(screen, 'Points that set new pipes out (CSV)');
    expect(download.suggestedFilename()).toMatch(/\.set-out\.csv$/);
    const rows = readCsv(await textOf(download));
    expect(rows.map((row) => row.point)).toEqual(['NL-1', 'NL-2', 'NL-3', 'NL-4', 'NL-5']);
    expect(rows[2]).toMatchObject({
      fitting: '1/8 bend',
      turn_deg: '45',
      tie_1_from: 'Gate post',
      tie_1_ft: '15',
    });
  });

  await test.step('the pipe’s own card leads there', async () => {
    await screen.goTo('Line');
    await hand.press(screen.row('New line'));
    await screen.press('Set it out');
    await expect(pointCard(screen, 'NL-1')).toBeVisible();
  });
});

function pointCard(screen: Screen, label: string): Locator {
  return screen.card.getByRole('region', { name: `Set out ${label}`, exact: true });
}
