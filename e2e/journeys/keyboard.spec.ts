import { readCsv } from '../src/csv';
import { expect, test } from '../src/fixtures';
import { downloadSite } from '../src/HandOff';
import { Home } from '../src/Home';
import { factOn, tapesOn } from '../src/Marks';
import { dec, ft } from '../src/measuredYard';
import { typeReadings } from '../src/Runs';
import { Screen } from '../src/Screen';
import { placeOf, textOf } from '../src/siteFile';
import { Yard } from '../src/Yard';

const FOOT_M = 0.3048; // exact, by the definition of the international foot

/** The cleanout stands 6 ft along and 5 ft out from corner D, which lies at 10 ft east, 36 ft north. */
const CLEANOUT_FT = { x: 16, y: 31 };
const TEN_DEGREES = (10 * Math.PI) / 180;

test('a whole site by keys alone, from the list and its forms', async ({ page, keys }) => {
  const home = new Home(page, keys);
  const screen = new Screen(page, keys);
  const yard = new Yard(screen);

  await home.open();
  await home.press('New site');
  await yard.draw('Building');
  await yard.measure({ by: 'coordinates', east: ft(10), north: ft(60) }, 'Place this point');
  await yard.leg('N 90 E', '30');
  await yard.leg('R 90', '24');
  await yard.leg('R 90', '30');
  await yard.finish();
  await yard.isOpen('Building');
  await yard.rename('House');
  await yard.back();

  await yard.draw('Cleanout');
  await yard.measure(
    {
      by: 'offset',
      from: 'House corner D',
      to: 'House corner C',
      along: dec('6'),
      out: dec('5'),
      side: 'Right',
    },
    'Place the cleanout',
  );
  await yard.isOpen('Cleanout');
  await screen.fill('Riser depth', '3');

  await screen.goTo('Line');
  await screen.press('Draw the pipe');
  await screen.choose('Use a point that is there', 'Cleanout');
  await yard.leg('S 10 E', '25');
  await yard.leg('R 15', '20');
  await yard.finish();
  await yard.isOpen('Lateral');
  await screen.choose('Material', 'Clay');

  await screen.goTo('Runs');
  await screen.press('Add a run');
  await yard.isOpen('Run A');
  await screen.choose('Zeroed with the', 'Head at the rim of the riser');
  await expect(screen.field('Riser, rim to pipe')).toHaveValue(/^3'|^3 ft/);
  await screen.pick(/^Pushed/, 'Against the flow');
  await screen.pick(/^Pushed/, 'With the flow');
  await screen.choose('Zeroed with the', 'Head in the pipe');
  await screen.write(/^A1: counter/, '');
  await typeReadings(screen, 'A', [
    { counter: '5', seen: 'Roots', clock: '12', note: 'first' },
    { counter: '12', seen: 'Crack', clock: '9-3' },
    { counter: '31.5', seen: 'Obstruction', note: 'no way on', stuck: true },
  ]);

  const { site } = await downloadSite(screen);
  const cleanout = placeOf(site, 'Cleanout');
  expect(cleanout.x / FOOT_M).toBeCloseTo(CLEANOUT_FT.x, 6);
  expect(cleanout.y / FOOT_M).toBeCloseTo(CLEANOUT_FT.y, 6);
  const bend = placeOf(site, 'Lateral', 'b');
  expect(bend.x / FOOT_M).toBeCloseTo(CLEANOUT_FT.x + 25 * Math.sin(TEN_DEGREES), 6);
  expect(bend.y / FOOT_M).toBeCloseTo(CLEANOUT_FT.y - 25 * Math.cos(TEN_DEGREES), 6);
  expect(site.runs[0]?.readings).toMatchObject([
    { number: 1, seen: 'roots', clock: { from: 12 }, passed: true, note: 'first' },
    { number: 2, seen: 'crack', clock: { from: 9, to: 3 }, passed: true },
    { number: 3, seen: 'obstruction', passed: false, note: 'no way on' },
  ]);

  await screen.goTo('Marks');
  await keys.press(screen.row('A2'));
  const mark = screen.card.getByRole('region', { name: 'Mark A2' });
  const slope = site.paths[0]?.stretches[0]?.slope ?? 0;
  const along = 12 / Math.hypot(1, slope); // 12 ft of cable on the grade, in plan
  const at = {
    x: CLEANOUT_FT.x + along * Math.sin(TEN_DEGREES),
    y: CLEANOUT_FT.y - along * Math.cos(TEN_DEGREES),
  };
  const corners: Readonly<Record<string, number>> = {
    'House corner C': Math.hypot(at.x - 40, at.y - 36),
    'House corner D': Math.hypot(at.x - 10, at.y - 36),
    Cleanout: along,
  };
  const tapes = await tapesOn(mark);
  expect(tapes.length).toBeGreaterThanOrEqual(2);
  for (const { from, feet } of tapes)
    expect(Math.abs(feet - (corners[from] ?? Number.NaN))).toBeLessThan(0.02);
  await screen.press('How this came about');
  await expect(factOn(mark, 'Counter')).toHaveText('12.0 ft');

  await screen.press('Marks');
  const coming = page.waitForEvent('download');
  await screen.press('Download marks as CSV');
  const rows = readCsv(await textOf(await coming));
  expect(rows.map((row) => [row.mark, row.seen, row.passed, row.note])).toEqual([
    ['A1', 'Roots', 'yes', 'first'],
    ['A2', 'Crack', 'yes', ''],
    ['A3', 'Obstruction', 'no', 'no way on'],
  ]);
  expect(Number(rows[1]?.x_ft)).toBeCloseTo(at.x, 2);
  expect(Number(rows[1]?.y_ft)).toBeCloseTo(at.y, 2);

  // undo and redo by keys, and a thing deleted by its key
  await page.keyboard.press('Control+z');
  await expect(screen.row('A')).toHaveCount(2);
  await page.keyboard.press('Control+Shift+z');
  await expect(screen.row('A')).toHaveCount(3);
  await screen.goTo('Yard');
  await keys.press(screen.row('Cleanout'));
  await yard.isOpen('Cleanout');
  await page.keyboard.press('Delete');
  await expect(screen.row('Cleanout')).toHaveCount(0);
  await page.keyboard.press('Control+z');
  await expect(screen.row('Cleanout')).toHaveCount(1);
  expect((await downloadSite(screen)).site).toEqual(site);
});
