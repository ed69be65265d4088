import { open } from 'node:fs/promises';
import { expect, test } from '../src/fixtures';
import { downloadSite } from '../src/HandOff';
import { Home } from '../src/Home';
import { openSample } from '../src/openSample';
import { readingRows } from '../src/Runs';
import { Screen } from '../src/Screen';
import { featureNamed, placeOf } from '../src/siteFile';
import { Yard } from '../src/Yard';

const FOOT_M = 0.3048; // exact, by the definition of the international foot

test('readings that cannot be are refused by name or kept with a warning', async ({ page, hand }) => {
  const screen = await openSample(page, hand);
  await screen.goTo('Runs');
  await hand.press(screen.row('A'));
  const entry = screen.card.getByRole('form', { name: 'Reading A11' });
  const counter = screen.field(/^A11: counter/);

  // refused: what was typed stays, nothing is added
  for (const [typed, said] of [
    ['abc', '“abc” is not a number that can be read.'],
    ['-3', '“-3” is below zero, which this cannot be.'],
    ['12 chains', '“chains” is not a unit that is known here'],
  ] as const) {
    await hand.write(counter, typed);
    await hand.write(entry.getByRole('textbox', { name: 'Note' }), 'keep me');
    await page.keyboard.press('Enter');
    await expect(entry).toContainText(said);
    await expect(counter).toHaveValue(typed);
    await expect(counter).toBeFocused();
    await expect(entry.getByRole('textbox', { name: 'Note' })).toHaveValue('keep me');
    await expect(readingRows(screen)).toHaveCount(10);
  }
  await hand.write(counter, '70');
  await hand.write(entry.getByRole('textbox', { name: "On the wall, o'clock" }), '13');
  await page.keyboard.press('Enter');
  await expect(entry).toContainText('13 is not on a clock face');
  await expect(readingRows(screen)).toHaveCount(10);
  await hand.write(entry.getByRole('textbox', { name: "On the wall, o'clock" }), '11');

  // more than any reading can be: the site's rule refuses it, and what was typed stays
  await hand.write(counter, '99999999');
  await page.keyboard.press('Enter');
  await expect(screen.notice).toContainText('the counter can be at most');
  await expect(counter).toHaveValue('99999999');
  await expect(entry.getByRole('textbox', { name: 'Note' })).toHaveValue('keep me');
  await expect(readingRows(screen)).toHaveCount(10);

  // past the end: taken, with what is the matter
  await hand.write(counter, '500');
  await page.keyboard.press('Enter');
  await expect(readingRows(screen)).toHaveCount(11);
  await expect(
    screen.card.getByRole('button', { name: /^Reading A11 \(500\.0 ft\) lies .* past the end of Lateral/ }),
  ).toBeVisible();
  await screen.undo();

  // lower than before: said while it is typed, and again of the reading
  await hand.write(counter, '20');
  await expect(entry).toContainText('Lower than the reading before.');
  await page.keyboard.press('Enter');
  await expect(
    screen.card.getByRole('button', {
      name: /^The counter went back: reading A11 \(20\.0 ft\) comes after A10/,
    }),
  ).toBeVisible();
  await screen.undo();

  // a riser of 20 ft: the first reading, 12.1 ft, is still in it
  await screen.press('How the camera went in');
  await screen.choose('Zeroed with the', 'Head at the rim of the riser');
  await screen.fill('Riser, rim to pipe', '20');
  await expect(
    screen.card.getByRole('button', { name: /^Reading A1 \(12\.1 ft\) is still in the riser/ }),
  ).toBeVisible();
  // another place is thought of and given up: the riser is as it was typed
  await screen.choose('Zeroed with the', 'Head in the pipe, at a known point');
  await screen.choose('Zeroed with the', 'Head at the rim of the riser');
  await expect(screen.field('Riser, rim to pipe')).toHaveValue(/^20\b/);
  await screen.fill('Riser, rim to pipe', 'deep');
  await expect(screen.card.getByText('“deep” is not a number that can be read.')).toBeVisible();
  const { site } = await downloadSite(screen);
  expect(site.runs[0]?.zero).toMatchObject({ at: 'rim', riser: 20 * FOOT_M });
  expect(site.runs[0]?.readings).toHaveLength(10);
});

test('tapes that cannot meet say what is missing', async ({ page, hand }) => {
  const screen = await openSample(page, hand);
  const yard = new Yard(screen);
  const { site } = await downloadSite(screen);
  const [a, b] = [placeOf(site, 'Power pole'), placeOf(site, 'Sycamore')];
  const apart = Math.hypot(b.x - a.x, b.y - a.y) / FOOT_M;
  // a tape from a pole or a trunk ends on its near face
  const [pole, trunk] = [faceOf(site, 'Power pole'), faceOf(site, 'Sycamore')];
  await screen.goTo('Yard');
  await yard.draw('Tree');
  await screen.press('Type how it was measured');
  await screen.choose('Tape 1 from', 'Power pole');
  await screen.choose('Tape 2 from', 'Sycamore');
  await screen.write('Length', '5', 0);
  await screen.write('Length', '4', 1);
  const gap = screen.card.getByText(
    /^These tapes do not reach each other: ([\d.]+) ft is missing between them\./,
  );
  await expect(gap).toBeVisible();
  expect(Number.parseFloat(/: ([\d.]+) ft/.exec((await gap.textContent()) ?? '')?.[1] ?? '')).toBeCloseTo(
    apart - 9 - pole - trunk,
    1,
  );
  await expect(screen.button('Place the tree')).toBeDisabled();

  await screen.write('Length', String(Math.ceil(apart) + 20), 0);
  const over = screen.card.getByText(/^One tape is too long for the other: they miss by ([\d.]+) ft\./);
  await expect(over).toBeVisible();
  expect(Number.parseFloat(/by ([\d.]+) ft/.exec((await over.textContent()) ?? '')?.[1] ?? '')).toBeCloseTo(
    Math.ceil(apart) + 20 + pole - apart - 4 - trunk,
    1,
  );
  await screen.choose('Tape 2 from', 'Power pole');
  await expect(screen.card.getByText('Both measurements start from the same place.')).toBeVisible();

  // put right, it goes in with what was typed before
  await screen.choose('Tape 2 from', 'Sycamore');
  await screen.write('Length', String(Math.ceil(apart)), 0);
  await screen.press('Place the tree');
  await yard.isOpen('Tree');
  const tree = placeOf((await downloadSite(screen)).site, 'Tree');
  expect(Math.hypot(tree.x - b.x, tree.y - b.y) / FOOT_M).toBeCloseTo(4 + trunk, 6);
});

test('files that are no site are refused by name, and nothing is lost', async ({ page, hand }, testInfo) => {
  test.slow();
  const home = new Home(page, hand);
  const screen = new Screen(page, hand);
  await home.open();
  await home.press('Open the sample site');
  const { text, site } = await downloadSite(screen);
  await hand.press(page.getByRole('button', { name: 'All sites' }));
  await expect(home.sites).toHaveCount(1);

  const spoilt = (spoil: (raw: Record<string, unknown>) => void) => {
    const raw = JSON.parse(text) as Record<string, unknown>; // the app's own file, an object at its top
    spoil(raw);
    return JSON.stringify(raw);
  };
  const files: readonly (readonly [string, string, readonly string[]])[] = [
    ['notes.json', 'buy couplings', ['not JSON', 'near "buy couplings"']],
    ['cut.json', text.slice(0, text.length / 2), ['not JSON']],
    ['map.json', '{"type":"FeatureCollection","features":[]}', ['is JSON, but it is not a site']],
    ['newer.json', spoilt((raw) => Object.assign(raw, { version: 7 })), ['version 7', 'up to version 3']],
    [
      'extra.json',
      spoilt((raw) => Object.assign(raw, { weather: 'wet' })),
      ['weather: a site has no field called "weather" here'],
    ],
    ['nan.json', text.replace(/"x":\s*-?[\d.]+/, '"x": NaN'), ['NaN', 'not numbers that can be measured']],
    ['text-number.json', text.replace(/"counter":\s*[\d.]+/, '"counter": "12 ft"'), ['runs[0]', 'counter']],
  ];
  for (const [name, body, said] of files) {
    await home.openFile({ name, mimeType: 'application/json', buffer: Buffer.from(body) });
    for (const part of said) await expect(home.problem, name).toContainText(part);
    await expect(home.sites).toHaveCount(1);
    await hand.press(home.problem.getByRole('button', { name: 'Close' }));
    await expect(home.problem).toHaveCount(0);
  }

  const huge = testInfo.outputPath('huge.json');
  const out = await open(huge, 'w');
  for (let mb = 0; mb < 50; mb++) await out.write(Buffer.alloc(1_000_000, ' '));
  await out.close();
  await home.openFile(huge);
  await expect(home.problem).toContainText('too large for a site: 50.0 MB');
  await hand.press(home.problem.getByRole('button', { name: 'Close' }));

  // the site that was there is there, as it was
  await hand.press(home.sites.getByRole('button', { name: /^Rear-alley lateral/ }));
  await expect(page.getByRole('main', { name: 'Plan' })).toBeVisible();
  expect((await downloadSite(screen)).site).toEqual(site);
});

/** From the middle of a round thing to its face, feet; 0 when its size is not known. */
function faceOf(site: Parameters<typeof featureNamed>[0], name: string): number {
  const { fields } = featureNamed(site, name);
  const diameter =
    'trunkDiameter' in fields ? fields.trunkDiameter : 'diameter' in fields ? fields.diameter : 0;
  return (diameter ?? 0) / 2 / FOOT_M;
}
