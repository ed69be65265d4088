import { devices, type Page } from '@playwright/test';
import { misfitsOn } from '../src/fit';
import { expect, test } from '../src/fixtures';
import { downloadSite } from '../src/HandOff';
import { Home } from '../src/Home';
import { keepPicture } from '../src/keepPicture';
import { openSample } from '../src/openSample';
import { openReading, readingCell, readingRow, readingRows } from '../src/Runs';
import { Screen } from '../src/Screen';
import { derivedOf, featureNamed } from '../src/siteFile';

const FOOT_M = 0.3048; // exact, by the definition of the international foot

/** Ten rows as a spreadsheet copies them; the fourth has words where its counter should be. */
const ROWS = [
  ['Counter', 'Seen', 'Clock', 'Could not pass', 'Remarks'],
  ['5.2', 'Fitting', '9', '', ''],
  ['14', 'Crack', '12', '', 'hairline'],
  ['16.4', 'roots', '10-2', '', ''],
  ['about 20', 'Roots', '3', '', 'felt, not seen'],
  ['21.5', 'Sag', '', '', 'half full'],
  ['27', 'Offset joint', '6', '', ''],
  ['31.3', 'Debris', '', '', 'washed on'],
  ['38.8', 'Scale', '4-8', '', ''],
  ['40.1', 'Connection', '2', '', ''],
  ['44.6', 'Obstruction', '', 'yes', 'a brick'],
];
const COUNTERS_FT = [5.2, 14, 16.4, 21.5, 27, 31.3, 38.8, 40.1, 44.6];

async function copyRows(page: Page, rows: readonly (readonly string[])[]): Promise<void> {
  const text = rows.map((cells) => cells.join('\t')).join('\n');
  await page.evaluate((t) => navigator.clipboard.writeText(t), text);
}

/** The numbers of the readings on the page, in their order. */
async function orderOf(screen: Screen): Promise<string> {
  const grid = screen.card.getByRole('grid');
  const labels = (await grid.count()) > 0 ? grid.getByRole('rowheader') : readingRows(screen);
  const texts = await labels.allTextContents();
  return texts.map((text) => /^[A-Z]+(\d+)/.exec(text)?.[1]).join(' ');
}

test.beforeEach(({ context }) => context.grantPermissions(['clipboard-read', 'clipboard-write']));

test('a visit after cleaning: its run is set up, pasted, put in order, corrected in the table and undone', async ({
  page,
  hand,
}) => {
  test.slow();
  const screen = await openSample(page, hand);

  // the visit
  await screen.goTo('Runs');
  await screen.press('Add a visit');
  await expect(screen.chooser('What for')).toHaveAccessibleName(/^After cleaning/);
  await screen.card.getByLabel('Day').fill('2026-05-02');
  await screen.fill('Note', 'jetted from the alley');
  await screen.press('Done');
  const visit = screen.card.getByRole('region', { name: 'May 2, 2026, after cleaning' });
  await expect(visit).toContainText('jetted from the alley');
  await expect(visit).toContainText('The next one that you add belongs here.');

  // its run: from the basement, zeroed with the tail of the head at the entry, by a counter that was checked on a tape
  await screen.press('Add a run');
  await expect(screen.card.getByRole('region', { name: 'Run C' })).toContainText(
    'May 2, 2026, after cleaning',
  );
  await screen.choose('Went in at', 'Basement floor cleanout');
  await screen.pick(/^Pushed/, 'With the flow');
  await screen.choose('Zeroed with the', 'Head in the pipe');
  await screen.fill('The counter then showed', '2');
  await screen.press('Counter, camera head and visit');
  await screen.pick(/^Counter scale from/, 'A known length');
  await screen.fill('The counter ran', '50');
  await screen.fill('Over a taped length of', `50' 6"`);
  await expect(screen.card.getByText('One counted foot is 1.0100 ft of cable.')).toBeVisible();
  await screen.fill('Camera head, lens to tail', '1.5');
  await screen.pick(/^What stood at the zero/, 'Tail');
  expect(await misfitsOn(page)).toEqual([]);

  // ten rows, of which one cannot be read
  await copyRows(page, ROWS);
  await screen.press('Paste readings');
  await expect(screen.field('Rows of a spreadsheet')).toBeFocused();
  await page.keyboard.press('ControlOrMeta+v');
  const preview = screen.card.getByRole('list', { name: 'Rows of the table' }).getByRole('listitem');
  await expect(preview).toHaveCount(10);
  await expect(screen.card.getByRole('status')).toHaveText('9 readings come in, one row stays out.');
  await expect(preview.nth(3)).toContainText('“about 20” is not a number that can be read.');
  await screen.pick(/^The table does not say/, 'Metres');
  await expect(preview.first()).toContainText('17.06 ft'); // 5.2 / 0.3048
  await screen.pick(/^The table does not say/, 'Feet');
  await expect(preview.first()).toContainText('5.2 ft');
  await keepPicture(page, 'runs-paste');
  await screen.press('Add 9 readings');
  await expect(readingRows(screen)).toHaveCount(9);
  await expect(screen.notice).toContainText('9 readings added to run C.');
  expect(await screen.undo()).toBe('Paste 9 readings');
  await expect(readingRows(screen)).toHaveCount(0);
  await screen.redo();
  await expect(readingRows(screen)).toHaveCount(9);

  const pasted = (await downloadSite(screen)).site;
  const run = pasted.runs.find((r) => r.letter === 'C');
  expect(run?.visit).toBe(pasted.visits.find((v) => v.date === '2026-05-02')?.id);
  expect(run?.scale).toMatchObject({
    by: 'calibration',
    counted: expect.closeTo(50 * FOOT_M, 9),
    actual: expect.closeTo(50.5 * FOOT_M, 9),
  });
  expect(run?.head).toEqual({ length: expect.closeTo(1.5 * FOOT_M, 9), zeroed: 'tail' });
  expect(run?.readings.map((r) => [r.number, r.seen, r.passed, r.note])).toEqual([
    [1, 'fitting', true, ''],
    [2, 'crack', true, 'hairline'],
    [3, 'roots', true, ''],
    [4, 'sag', true, 'half full'],
    [5, 'offset-joint', true, ''],
    [6, 'debris', true, 'washed on'],
    [7, 'scale', true, ''],
    [8, 'connection', true, ''],
    [9, 'obstruction', false, 'a brick'],
  ]);
  // by hand: 1.01 of what was counted since the zero at 2 ft, and the lens a head's length ahead of the tail
  const along = derivedOf(pasted)
    .marks.filter((m) => m.run.letter === 'C')
    .map((m) => m.trace.along / FOOT_M);
  for (const [i, feet] of COUNTERS_FT.entries())
    expect(along[i]).toBeCloseTo((feet - 2) * (50.5 / 50) + 1.5, 6);

  // put in another order, and back by the counter
  await screen.goTo('Runs');
  await hand.press(screen.row('C'));
  await expect(screen.button('Sort by counter')).toHaveCount(0);
  await openReading(screen, 'C3');
  await screen.press('Move C3 up');
  await expect.poll(() => orderOf(screen)).toBe('1 3 2 4 5 6 7 8 9');
  await screen.press('Move C3 up');
  await expect(screen.button('Move C3 up')).toBeDisabled();
  await expect.poll(() => orderOf(screen)).toBe('3 1 2 4 5 6 7 8 9');
  await screen.press('Sort by counter');
  await expect.poll(() => orderOf(screen)).toBe('1 2 3 4 5 6 7 8 9');
  await screen.undo();
  await expect.poll(() => orderOf(screen)).toBe('3 1 2 4 5 6 7 8 9');
  await screen.redo();

  // deleted, and back with a press
  await screen.press('Delete C3');
  await expect(readingRows(screen)).toHaveCount(8);
  await hand.press(screen.notice.getByRole('button', { name: 'Undo' }));
  await expect(readingRows(screen)).toHaveCount(9);

  // corrected in the table: what is no value stays in its cell with the reason, also while one looks elsewhere
  await hand.press(await readingCell(screen, 'C4', 'Counter'));
  await page.keyboard.type('twenty');
  await page.keyboard.press('Enter');
  await expect(screen.card.getByLabel('C5 counter')).toBeFocused();
  const wrong = await readingCell(screen, 'C4', 'Counter');
  await expect(wrong).toHaveText('twenty');
  await expect(wrong).toHaveAccessibleDescription('Counter: “twenty” is not a number that can be read.');
  await screen.goTo('Marks');
  await screen.goTo('Runs');
  await hand.press(screen.row('C'));
  await expect(await readingCell(screen, 'C4', 'Counter')).toHaveText('twenty');
  await hand.press(await readingCell(screen, 'C4', 'Counter'));
  await page.keyboard.press('ControlOrMeta+a');
  await page.keyboard.type('22');
  await page.keyboard.press('Tab');
  await page.keyboard.type('cra');
  await page.keyboard.press('Tab');
  await page.keyboard.type('7-8');
  await page.keyboard.press('Enter');
  await expect(await readingCell(screen, 'C4', 'Counter')).toHaveText('22');
  await expect(await readingCell(screen, 'C4', 'Seen')).toHaveText('Crack');
  await expect(await readingCell(screen, 'C4', "O'clock")).toHaveText('7-8');
  await keepPicture(page, 'runs-table');
  expect(await misfitsOn(page)).toEqual([]);
  const corrected = (await downloadSite(screen)).site.runs.find((r) => r.letter === 'C')?.readings[3];
  expect(corrected).toMatchObject({ seen: 'crack', clock: { from: 7, to: 8 } });
  expect(corrected?.counter).toBeCloseTo(22 * FOOT_M, 9);

  // each cell was a step of its own
  expect(await screen.undo()).toBe('Change reading C4');
  await screen.undo();
  await screen.undo();
  const back = (await downloadSite(screen)).site.runs.find((r) => r.letter === 'C');
  expect(back?.readings).toEqual(run?.readings);
});

test('the table by keys alone: into a cell, on, down, out of it, and rows pasted on a cell', async ({
  page,
  keys,
}) => {
  const home = new Home(page, keys);
  const screen = new Screen(page, keys);
  await home.open();
  await home.press('Open the sample site');
  await screen.goTo('Runs');
  await keys.press(screen.row('A'));
  const { keyboard } = page;
  const before = await orderOf(screen);
  await keys.press(screen.button('A1, all of it'));
  await expect(screen.button('Delete A1')).toBeVisible();
  await keyboard.press('Enter');
  await expect(screen.button('Delete A1')).toHaveCount(0);

  await keyboard.press('ArrowRight');
  await keyboard.press('ArrowDown');
  await keyboard.type('24.5');
  await keyboard.press('Enter');
  await expect(await readingCell(screen, 'A2', 'Counter')).toHaveText('24.5');
  await expect(screen.card.getByLabel('A3 counter')).toBeFocused();
  await keyboard.press('Shift+Tab');
  await expect(screen.card.getByLabel('A2 note')).toBeFocused();
  await keyboard.type('not kept');
  await keyboard.press('Escape');
  await expect(await readingCell(screen, 'A2', 'Note')).toHaveText('yard cleanout above');
  await expect(await readingCell(screen, 'A2', 'Note')).toBeFocused();
  // Delete belongs to the cell: the run stays
  await keyboard.press('Delete');
  await keyboard.press('Enter');
  await expect(await readingCell(screen, 'A2', 'Note')).toHaveText('');
  await keyboard.press('Escape');
  await keyboard.press('Tab');
  await expect(screen.chooser('Why the camera went no further')).toBeFocused();
  await keyboard.press('Shift+Tab');
  await expect(await readingCell(screen, 'A3', 'Note')).toBeFocused();

  await copyRows(page, [
    ['70 ft', 'Crack'],
    ['71 ft', 'grumbles'],
  ]);
  await keyboard.press('ControlOrMeta+v');
  await expect(screen.card.getByRole('region', { name: 'Paste readings into run A' })).toBeVisible();
  await expect(screen.card.getByRole('radiogroup', { name: /^The table does not say/ })).toHaveCount(0);
  await expect(screen.card.getByRole('status')).toHaveText('One reading comes in, one row stays out.');
  await keys.choose(screen.chooser('“grumbles” in one row: what is it\\?'), 'Debris');
  await expect(screen.card.getByRole('status')).toHaveText('2 readings come in.');
  await keys.press(screen.button('Add 2 readings'));
  await expect.poll(() => orderOf(screen)).toBe(`${before} 11 12`);
  await expect(await readingCell(screen, 'A12', 'Seen')).toHaveText('Debris');
  await expect(await readingCell(screen, 'A12', 'Note')).toHaveText('grumbles');
});

test.describe('very many', () => {
  // the plan draws and labels a thousand marks meanwhile
  test.use({ actionTimeout: 30_000 });

  test('a thousand rows with text in the numbers come in as one step', async ({ page, hand }) => {
    test.slow();
    const home = new Home(page, hand);
    const screen = new Screen(page, hand);
    await home.open();
    await home.press('Open the sample site');
    await screen.goTo('Runs');
    await hand.press(screen.row('B'));
    const kinds = ['Roots', 'Crack', 'Sag', 'Scale'];
    const rows = Array.from({ length: 1000 }, (_, i) =>
      i % 100 === 50 ? ['n/a', 'Roots'] : [`${(i * 0.05).toFixed(2)} ft`, kinds[i % 4] ?? ''],
    );
    await copyRows(page, [['Counter', 'Seen'], ...rows]);
    await screen.press('Paste readings');
    await page.keyboard.press('ControlOrMeta+v');
    await expect(screen.card.getByRole('status')).toHaveText('990 readings come in, 10 rows stay out.', {
      timeout: 15_000,
    });
    await hand.mark(
      screen.card.getByRole('checkbox', { name: 'Only rows that something is the matter with' }),
    );
    const preview = screen.card.getByRole('list', { name: 'Rows of the table' }).getByRole('listitem');
    await expect(preview).toHaveCount(10);
    await expect(preview.first()).toContainText('“n/a” is not a number that can be read.');
    await screen.press('Add 990 readings');
    await expect(screen.card.getByRole('heading', { name: 'Readings, 995' })).toBeVisible({
      timeout: 15_000,
    });
    const { site } = await downloadSite(screen);
    expect(site.runs.find((r) => r.letter === 'B')?.readings).toHaveLength(995);
    await screen.undo();
    expect((await downloadSite(screen)).site.runs.find((r) => r.letter === 'B')?.readings).toHaveLength(5);
  });
});

test('text that is no table says so, and what is refused stays', async ({ page, hand }) => {
  const screen = await openSample(page, hand);
  await screen.goTo('Runs');
  await hand.press(screen.row('A'));
  await screen.press('Paste readings');
  const text = screen.field('Rows of a spreadsheet');
  await text.fill('Name\tPhone\nOtto\tnone');
  await expect(screen.card.getByRole('alert')).toContainText('No column holds what the counter showed.');
  await expect(screen.button('Add the readings')).toBeDisabled();
  await text.fill('12.1\tFitting\n12,1\tCrack');
  await expect(
    screen.card.getByText('One of them is in the run already, with the same counter.'),
  ).toBeVisible();
  // it waits while one looks elsewhere
  await screen.goTo('Line');
  await screen.goTo('Runs');
  await hand.press(screen.row('A'));
  await expect(text).toHaveValue('12.1\tFitting\n12,1\tCrack');
  await screen.press('Cancel');
  await expect(readingRows(screen)).toHaveCount(10);

  // a scale of nothing, a calibration of half a pair, a zero without its point: the run stays as it was
  const before = (await downloadSite(screen)).site;
  await screen.goTo('Runs');
  await hand.press(screen.row('A'));
  await screen.press('How the camera went in');
  await screen.press('Counter, camera head and visit');
  await screen.pick(/^Counter scale from/, 'A typed factor');
  await screen.fill('Counter scale', '0');
  await expect(screen.card.getByText('“0” must be more than zero.')).toBeVisible();
  await screen.pick(/^Counter scale from/, 'A known length');
  await screen.fill('The counter ran', '50');
  await screen.choose('Zeroed with the', 'Head in the pipe, at a known point');
  expect((await downloadSite(screen)).site).toEqual(before);

  // with its point the zero is one
  await screen.goTo('Runs');
  await hand.press(screen.row('A'));
  await screen.press('How the camera went in');
  await screen.choose('Zeroed with the', 'Head in the pipe, at a known point');
  await screen.choose('The known point', 'Yard cleanout');
  const cleanout = featureNamed(before, 'Yard cleanout');
  expect((await downloadSite(screen)).site.runs[0]?.zero).toEqual({
    at: 'point',
    counter: before.runs[0]?.zero.counter,
    point: { of: cleanout.id, at: cleanout.vertices[0]?.id },
  });
});

test('visits: runs are put into one, stay when it goes, and two lie side by side', async ({ page, hand }) => {
  const home = new Home(page, hand);
  const screen = new Screen(page, hand);
  await home.open();
  await home.press('Open the sample site');
  await screen.goTo('Runs');
  await screen.press(/^Change Apr 14, 2026/);
  await screen.press('Remove the visit');
  await expect(screen.notice).toContainText('Runs A, B stay, without a visit.');
  const loose = screen.card.getByRole('region', { name: 'No visit yet' });
  await expect(loose.getByRole('listitem')).toHaveCount(2);
  await screen.press('Add a visit');
  await screen.choose('What for', 'After repair');
  await screen.card.getByLabel('Day').fill('2026-06-01');
  await screen.press('Done');
  await screen.choose('All of them were made on the visit', 'Jun 1, 2026, after repair');
  await expect(loose).toHaveCount(0);
  const { site } = await downloadSite(screen);
  expect(new Set(site.runs.map((r) => r.visit))).toEqual(new Set([site.visits[0]?.id]));
  for (let step = 0; step < 4; step++) await screen.undo();

  // a second look from the basement, after cleaning: the roots at A8 have gone, a crack is new, the rest was not reached
  await screen.goTo('Runs');
  await screen.press('Add a visit');
  await screen.press('Add a run');
  await screen.choose('Went in at', 'Basement floor cleanout');
  await screen.pick(/^Pushed/, 'With the flow');
  await screen.press('Paste readings');
  await screen
    .field('Rows of a spreadsheet')
    .fill('12.1 ft\tFitting\n23.2 ft\tFitting\n30 ft\tCrack\n60 ft\tEnd of run');
  await screen.press('Add 4 readings');
  await screen.press('Runs');
  await screen.press('Compare two visits');
  const list = (name: string) => screen.card.getByRole('region', { name: new RegExp(`^${name}, `) });
  await expect(list('Still there')).toContainText('A1');
  await expect(list('Still there')).toContainText('C1');
  await expect(list('New')).toContainText('Crack');
  await expect(list('Gone')).toContainText('Sag');
  await expect(list('Not looked at again')).toContainText('A10');
  await keepPicture(page, 'runs-compared');
  expect(await misfitsOn(page)).toEqual([]);
  // a look at one on the plan, and back
  await hand.press(list('New').getByRole('button'));
  await expect(screen.card.getByRole('region', { name: 'Mark C3' })).toBeVisible();
  await hand.press(screen.tab('Runs'));
  await expect(list('New')).toContainText('Crack');
});

test.describe('on a phone', () => {
  const { viewport, hasTouch, isMobile } = devices['Pixel 5'];
  test.use({ viewport: { ...viewport, width: 390, height: 844 }, hasTouch, isMobile });

  test('a reading with all that can be said of it; rows are opened, changed and moved', async ({
    page,
    hand,
  }) => {
    const home = new Home(page, hand);
    const screen = new Screen(page, hand);
    await home.open();
    await home.press('Open the sample site');
    await screen.goTo('Runs');
    await screen.press('Raise the card');
    await hand.press(screen.row('A'));
    const entry = screen.card.getByRole('form', { name: 'Reading A11' });
    await screen.write(/^A11: counter/, '40');
    await screen.choose('Seen', 'Sag');
    await screen.press('More');
    await screen.choose('How bad', 'Severe');
    await screen.choose('Advised', 'Spot repair');
    await hand.write(entry.getByRole('textbox', { name: 'Goes on to' }), '44.5');
    await hand.write(entry.getByRole('textbox', { name: 'Water, share of the pipe' }), '130');
    await hand.write(entry.getByRole('textbox', { name: 'Time in the video' }), '12:34');
    await screen.choose('Point that was seen', 'Yard cleanout');
    expect(await misfitsOn(page)).toEqual([]);
    // a field that cannot be read holds the reading back
    await hand.press(entry.getByRole('button', { name: 'Add A11' }));
    await expect(readingRow(screen, 'A11')).toHaveCount(0);
    await expect(entry.getByRole('textbox', { name: 'Water, share of the pipe' })).toBeFocused();
    await hand.write(entry.getByRole('textbox', { name: 'Water, share of the pipe' }), '30 %');
    await hand.press(entry.getByRole('button', { name: 'Add A11' }));
    await expect(readingRow(screen, 'A11')).toContainText('severe');
    await expect(readingRow(screen, 'A11')).toContainText('40.0 – 44.5 ft');
    await expect(screen.field(/^A12: counter/)).toHaveValue('');
    await expect(
      screen.card.getByRole('form', { name: 'Reading A12' }).getByRole('textbox', { name: 'Goes on to' }),
    ).toHaveValue('');

    await openReading(screen, 'A11');
    await screen.press('Move A11 up');
    await expect.poll(() => orderOf(screen)).toBe('1 2 3 4 5 6 7 8 9 11 10');
    await keepPicture(page, 'runs-phone-row');
    await screen.press('No point that was seen');
    const { site } = await downloadSite(screen);
    const reading = site.runs[0]?.readings.find((r) => r.number === 11);
    expect(reading).toMatchObject({
      seen: 'sag',
      severity: 'severe',
      action: 'spot-repair',
      water: 0.3,
      videoAt: 754,
    });
    expect(reading?.to).toBeCloseTo(44.5 * FOOT_M, 9);
    expect(reading).not.toHaveProperty('seenAt');
  });
});
