import { readCsv } from '../src/csv';
import { PRINTED_TO_FT } from '../src/feetInches';
import { expect, test } from '../src/fixtures';
import { downloadSite } from '../src/HandOff';
import { Home } from '../src/Home';
import { keepPicture } from '../src/keepPicture';
import { factOn, feetOn, nearOn, tapesOn } from '../src/Marks';
import { dec } from '../src/measuredYard';
import { type Place, Plan } from '../src/Plan';
import { expectReading, typeReadings } from '../src/Runs';
import { Screen } from '../src/Screen';
import { derivedOf, featureNamed, placeOf, textOf } from '../src/siteFile';
import { Yard } from '../src/Yard';

const FOOT_M = 0.3048; // exact, by the definition of the international foot
const ft = (feet: number) => feet * FOOT_M;
/** What is near is told to the inch. */
const HALF_INCH_FT = 0.5 / 12 + 1e-3;
const apart = (a: Place, b: Place) => Math.hypot(b.x - a.x, b.y - a.y);
const from = (p: Place, east: number, north: number): Place => ({ x: p.x + ft(east), y: p.y + ft(north) });

const READINGS = [
  { counter: '4.5', seen: 'Roots', clock: '12', note: 'fine hair roots' },
  { counter: '9.2', seen: 'Offset joint', clock: '3' },
  { counter: '13', seen: 'Crack', clock: '9-3', note: 'hairline, dry' },
  { counter: '18.6', seen: 'Connection', clock: '10' },
  { counter: '27.4', seen: 'Sag', note: 'water to half' },
  { counter: '33.1', seen: 'Infiltration', clock: '1' },
  { counter: '41.7', seen: 'Roots', clock: '10-2', note: 'mass, pushed through' },
  { counter: '49.3', seen: 'Obstruction', clock: '6', note: 'looks like a brick', stuck: true },
];

test('a newcomer sketches a yard, types a run and reads its marks', async ({ page, hand, context }) => {
  test.slow();
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  const home = new Home(page, hand);
  const screen = new Screen(page, hand);
  const yard = new Yard(screen);
  const plan = new Plan(page, hand);
  const shot = (name: string) => keepPicture(page, name);

  await home.open();
  await expect(page.getByText('None yet.')).toBeVisible();
  await shot('01-home');
  await home.press('New site');
  await shot('02-empty-yard');

  // the house: a first corner by eye, then walls as they are taped
  const corner = await plan.share(0.3, 0.2);
  await yard.draw('Building');
  await shot('03-draw-building');
  await hand.tap(corner);
  await yard.leg('N 90 E', '30');
  await yard.leg('R 90', `24'`);
  await shot('04-legs');
  await yard.leg('R 90', `30' 0"`);
  await yard.finish();
  await yard.isOpen('Building');
  await yard.rename('House');
  await shot('05-house-card');
  await yard.back();

  const stackTap = await plan.share(0.42, 0.29);
  await yard.draw('Stack');
  await hand.tap(stackTap);
  await yard.isOpen('Stack');
  await yard.back();

  const begun = (await downloadSite(screen)).site;
  const a = placeOf(begun, 'House', 'a');
  plan.learn({ screen: corner, plan: a }, { screen: stackTap, plan: placeOf(begun, 'Stack') });
  // the walls are 30 by 24 ft, square, whatever the screen
  const b = placeOf(begun, 'House', 'b');
  const c = placeOf(begun, 'House', 'c');
  const d = placeOf(begun, 'House', 'd');
  expect(apart(b, from(a, 30, 0))).toBeLessThan(1e-6);
  expect(apart(c, from(a, 30, -24))).toBeLessThan(1e-6);
  expect(apart(d, from(a, 0, -24))).toBeLessThan(1e-6);

  // a cleanout off the south wall, a tree by two tapes
  await screen.goTo('Yard');
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
  await shot('06-cleanout');
  await yard.back();
  await yard.draw('Tree');
  await shot('07-tree-draw');
  await yard.measure(
    {
      by: 'tapes',
      tapes: [
        { from: 'House corner D', length: dec('32') },
        { from: 'House corner C', length: dec('20') },
      ],
      side: 'Right',
    },
    'Place the tree',
  );
  await yard.isOpen('Tree');
  await screen.fill('Trunk diameter', '18');
  await screen.fill('Species', 'Maple');
  await yard.rename('Maple');
  await shot('08-tree-card');
  await yard.back();

  // the boundary by its courses, the main, its tap and a reference point by eye
  await yard.draw('Boundary');
  await plan.tap(from(a, -8, 9));
  await yard.leg('N 90 E', '56');
  await yard.leg('S 0 E', '80');
  await yard.leg('N 90 W', '56');
  await yard.finish();
  await yard.isOpen('Boundary');
  await shot('09-boundary');
  await yard.back();
  await yard.draw('Sewer main');
  await plan.tap(from(d, -15, -55));
  await plan.tap(from(d, 30, -55));
  await yard.finish();
  await yard.isOpen('Sewer main');
  await yard.back();
  await yard.draw('Tap on the main');
  await plan.tap(from(d, 20, -55));
  await yard.isOpen('Tap on the main');
  await yard.back();
  await yard.draw('Reference point');
  await plan.tap(from(d, 44, -30));
  await yard.isOpen('Reference point');
  await yard.back();
  await shot('10-yard');

  const laid = (await downloadSite(screen)).site;
  const cleanout = placeOf(laid, 'Cleanout');
  expect(apart(cleanout, from(d, 6, -5))).toBeLessThan(1e-6);
  const maple = placeOf(laid, 'Maple');
  expect(apart(maple, d)).toBeCloseTo(ft(32), 6);
  expect(apart(maple, c)).toBeCloseTo(ft(20), 6);
  expect(maple.y, 'right of D to C is south').toBeLessThan(d.y);
  expect(featureNamed(laid, 'Maple').fields).toMatchObject({ trunkDiameter: 18 * 0.0254, species: 'Maple' });
  expect(placeOf(laid, 'Boundary', 'c').x - placeOf(laid, 'Boundary', 'a').x).toBeCloseTo(ft(56), 6);

  // a drag moves what was put there by eye
  await screen.goTo('Yard');
  const reference = placeOf(laid, 'Reference point');
  await plan.tap(reference);
  await yard.isOpen('Reference point');
  await plan.drag(reference, from(reference, 0, 12));
  const dragged = (await downloadSite(screen)).site;
  expect(apart(placeOf(dragged, 'Reference point'), from(reference, 0, 12))).toBeLessThan(
    1.5 / plan.pxPerMetre,
  );

  // delete, undo, redo, undo
  await screen.goTo('Yard');
  await screen.hand.press(screen.row('Reference point'));
  await screen.press('Delete');
  await expect(screen.row('Reference point')).toHaveCount(0);
  expect(await screen.undo()).toBe('Delete Reference point');
  await expect(screen.row('Reference point')).toBeVisible();
  expect(await screen.redo()).toBe('Delete Reference point');
  await expect(screen.row('Reference point')).toHaveCount(0);
  await screen.undo();
  expect((await downloadSite(screen)).site).toEqual(dragged);

  // pan and zoom: what lies under a finger is where it should be afterwards
  await screen.goTo('Yard');
  await plan.pan(from(d, 38, 10), { x: 30, y: -20 });
  await plan.tap(maple);
  await yard.isOpen('Maple');
  await plan.zoom(from(d, 15, -25), 1.5);
  await plan.tap(cleanout);
  await yard.isOpen('Cleanout');
  await shot('12-zoomed');
  await plan.zoom(from(d, 15, -25), 1 / 1.5);
  await plan.pan(from(d, 38, 10), { x: -30, y: 20 });
  await plan.tap(cleanout);
  await yard.isOpen('Cleanout');

  // the pipe: from the cleanout by one bend to the tap; a branch from the stack onto its first leg
  await screen.goTo('Line');
  await shot('13-line-empty');
  await screen.press('Draw the pipe');
  const tap = placeOf(laid, 'Tap on the main');
  const bend = from(d, 12, -30);
  await plan.tap(cleanout);
  await plan.tap(bend);
  await shot('14-draw-pipe');
  await plan.tap(tap);
  await yard.finish();
  await yard.isOpen('Lateral');
  await shot('15-pipe-card');
  await screen.choose('Material', 'Clay');
  await screen.fill('Diameter inside', '6');
  await screen.write('It changes at', '24');
  await page.keyboard.press('Enter');
  await screen.choose('Material', 'Plastic', 1);
  await screen.hand.write(screen.field('Diameter inside', 1), '4');
  await page.keyboard.press('Enter');
  await shot('16-stretches');
  await screen.press('Line');
  await screen.press('Draw a branch');
  const stack = placeOf(laid, 'Stack');
  await plan.tap(stack);
  await plan.tap({ x: (cleanout.x + bend.x) / 2, y: (cleanout.y + bend.y) / 2 });
  await yard.finish();
  await yard.isOpen('Branch');
  await screen.press('Line');
  await expect(screen.row('Branch')).toContainText('joins Lateral at');
  await shot('17-line');

  // a drag does not move what was taped
  await screen.goTo('Yard');
  await plan.tap(maple);
  await yard.isOpen('Maple');
  await plan.drag(maple, from(maple, 10, -5));
  await expect(screen.notice).toContainText('held by its measurements');
  await shot('11-held');

  const piped = (await downloadSite(screen)).site;
  expect(placeOf(piped, 'Maple')).toEqual(maple);
  const [lateral, branch] = piped.paths;
  expect(lateral?.vertices[0]?.spot).toEqual({
    by: 'at',
    point: { of: featureNamed(piped, 'Cleanout').id, at: 'a' },
  });
  expect(lateral?.vertices.at(-1)?.spot).toEqual({
    by: 'at',
    point: { of: featureNamed(piped, 'Tap on the main').id, at: 'a' },
  });
  expect(lateral?.stretches.map(({ from: at, material, diameter }) => [at, material, diameter])).toEqual([
    [0, 'clay', 6 * 0.0254],
    [ft(24), 'plastic', 4 * 0.0254],
  ]);
  expect(branch?.vertices[0]?.spot).toMatchObject({ point: { of: featureNamed(piped, 'Stack').id } });
  const join = branch?.vertices.at(-1)?.spot;
  expect(join).toMatchObject({ by: 'at', point: { of: lateral?.id } });

  // everything is still there after a reload
  await page.reload();
  await expect(page.getByRole('main', { name: 'Plan' })).toBeVisible();
  expect((await downloadSite(screen)).site).toEqual(piped);

  // the run, by keys alone
  await screen.goTo('Runs');
  await screen.press('Add a run');
  await yard.isOpen('Run A');
  await expect(screen.card.getByRole('heading', { name: 'Run A, from Cleanout' })).toBeVisible();
  await shot('18-run-card');
  await screen.write(/^A1: counter/, '');
  await typeReadings(screen, 'A', READINGS);
  await shot('19-readings');
  for (const [i, reading] of READINGS.entries()) await expectReading(screen, `A${i + 1}`, reading);
  const { site } = await downloadSite(screen);
  expect(site.runs[0]?.readings).toMatchObject(
    READINGS.map(({ counter, note = '', stuck = false }, i) => ({
      number: i + 1,
      counter: ft(Number(counter)),
      passed: !stuck,
      note,
    })),
  );
  expect(site.runs[0]?.readings.map((r) => r.clock)).toEqual([
    { from: 12 },
    { from: 3 },
    { from: 9, to: 3 },
    { from: 10 },
    undefined,
    { from: 1 },
    { from: 10, to: 2 },
    { from: 6 },
  ]);

  // the marks: reading 9.2 lies on the straight first leg, so its place follows from the cleanout, the bend and the grade
  await screen.goTo('Marks');
  await shot('20-marks');
  await expect(screen.row('A')).toHaveCount(8);
  await screen.hand.press(screen.row('A2'));
  const mark = screen.card.getByRole('region', { name: 'Mark A2' });
  await expect(mark.getByRole('heading', { name: 'Offset joint, 3' })).toBeVisible();
  await shot('21-mark');
  await screen.press('How this came about');
  await shot('22-trace');
  const turn = placeOf(site, 'Lateral', 'b');
  const slope = site.paths[0]?.stretches[0]?.slope ?? 0; // the cable lies on the grade, the mark in plan
  const share = ft(9.2) / Math.hypot(1, slope) / apart(cleanout, turn);
  const expected = {
    x: cleanout.x + (turn.x - cleanout.x) * share,
    y: cleanout.y + (turn.y - cleanout.y) * share,
  };
  // nobody reaches a trunk's middle: its tape ends on the near face of the 18 in trunk
  const pulls = [apart(d, expected), apart(c, expected), apart(maple, expected) - 9 * 0.0254];
  const tapes = await tapesOn(mark);
  expect(tapes.map(({ use, from: at }) => [use, at])).toEqual([
    ['First tape', 'House corner D'],
    ['Second tape', 'House corner C'],
    ['To check', 'Maple, near face'],
  ]);
  for (const [i, { feet }] of tapes.entries())
    expect(Math.abs(ft(feet) - (pulls[i] as number))).toBeLessThan(ft(PRINTED_TO_FT));
  const toD = Math.atan2(d.y - expected.y, d.x - expected.x);
  const toC = Math.atan2(c.y - expected.y, c.x - expected.x);
  const cut = Math.abs(((toD - toC) * 180) / Math.PI);
  await expect(
    mark.getByText(`The tapes cross at ${Math.round(cut)}°, on the right, looking from`),
  ).toBeVisible();
  const trunkFeet = (apart(maple, expected) - 9 * 0.0254) / FOOT_M;
  const boundaryFeet = (expected.x - placeOf(site, 'Boundary', 'a').x) / FOOT_M;
  expect(Math.abs((await nearOn(mark, 'Maple')) - trunkFeet)).toBeLessThan(HALF_INCH_FT);
  expect(Math.abs((await nearOn(mark, 'Boundary')) - boundaryFeet)).toBeLessThan(HALF_INCH_FT);
  await expect(factOn(mark, 'Counter')).toHaveText('9.2 ft');
  await expect(factOn(mark, 'Zero')).toContainText('0.0 ft');
  await expect(factOn(mark, 'Zero')).toContainText('Head in the pipe.');
  expect(Math.abs((await feetOn(mark, 'Along the pipe')) - 9.2)).toBeLessThan(PRINTED_TO_FT);
  const facts = derivedOf(site).marks[1]?.place;
  expect(facts && apart(facts.at, expected)).toBeLessThan(1e-6);

  // CSV: the download and the clipboard say the same, and what geometry says
  await screen.press('Marks');
  const coming = page.waitForEvent('download');
  await screen.press('Download marks as CSV');
  const csv = await textOf(await coming);
  await screen.press('Copy');
  await expect(screen.notice).toContainText('on the clipboard');
  expect(await page.evaluate(() => navigator.clipboard.readText())).toBe(csv);
  const rows = readCsv(csv);
  expect(rows.map((row) => [row.mark, Number(row.reading_ft), row.seen, row.passed, row.note])).toEqual(
    READINGS.map(({ counter, seen, note = '', stuck = false }, i) => [
      `A${i + 1}`,
      Number(counter),
      seen,
      stuck ? 'no' : 'yes',
      note,
    ]),
  );
  expect(Number(rows[1]?.x_ft)).toBeCloseTo(expected.x / FOOT_M, 2);
  expect(Number(rows[1]?.y_ft)).toBeCloseTo(expected.y / FOOT_M, 2);
  expect(Number(rows[1]?.tie_1_ft)).toBeCloseTo((pulls[0] as number) / FOOT_M, 2);
  expect(Number(rows[1]?.cut_deg)).toBeCloseTo(cut, 1);
  expect(Number(rows[1]?.trunk_clearance_ft)).toBeCloseTo(trunkFeet, 2);
  expect(Number(rows[1]?.boundary_clearance_ft)).toBeCloseTo(boundaryFeet, 2);
  expect(rows[6]?.clock).toBe("10-2 o'clock");
});
