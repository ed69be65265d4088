import { feetOf, PRINTED_TO_FT } from '../src/feetInches';
import { expect, test } from '../src/fixtures';
import { downloadSite } from '../src/HandOff';
import { Home } from '../src/Home';
import { bearing, dec, ft } from '../src/measuredYard';
import { openPractice } from '../src/openPractice';
import { pictureFiles } from '../src/pictureFiles';
import { Screen } from '../src/Screen';
import { featureNamed, placeOf } from '../src/siteFile';
import { Yard } from '../src/Yard';

const FOOT_M = 0.3048; // exact, by the definition of the international foot

test.beforeEach(async ({ page, hand }) => {
  await openPractice(new Home(page, hand));
});

test('tapes that leave a place open say so, and the same reference twice is refused', async ({
  page,
  hand,
}) => {
  const screen = new Screen(page, hand);
  const yard = new Yard(screen);

  // three tapes of which two start from one corner: refused while it is so, nothing typed is lost
  await yard.draw('Tree');
  await screen.press('Type how it was measured');
  await screen.press('Another tape');
  for (const [i, [from, length]] of [
    ['House corner C', `20'`],
    ['House corner D', `30'`],
    ['House corner C', `21'`],
  ].entries()) {
    await screen.choose(`Tape ${i + 1} from`, from as string); // pairs of strings, see above
    await screen.write('Length', length as string, i);
  }
  await expect(screen.card.getByText('Both measurements start from the same place.')).toBeVisible();
  await expect(screen.button('Place the tree')).toBeDisabled();
  await expect(screen.field('Length', 0)).toHaveValue(`20'`);
  await hand.press(screen.button('Cancel').first());

  // a point 10 m past corner C in line with the wall from D, then a tree on that very line by three tapes
  await yard.draw('Reference point');
  await yard.measure(
    {
      by: 'offset',
      from: 'House corner D',
      to: 'House corner C',
      along: { text: '20 m', feet: 20 / FOOT_M },
      out: ft(0),
      side: 'Right',
    },
    'Place the reference point',
  );
  await yard.isOpen('Reference point');
  await yard.back();
  await yard.draw('Tree');
  await yard.measure(
    {
      by: 'tapes',
      tapes: [
        { from: 'House corner D', length: { text: '15.01 m', feet: 15.01 / FOOT_M } },
        { from: 'House corner C', length: { text: '5.02 m', feet: 5.02 / FOOT_M } },
        { from: 'Reference point', length: { text: '5.01 m', feet: 5.01 / FOOT_M } },
      ],
      side: 'Right',
    },
    'Place the tree',
  );
  await yard.isOpen('Tree 2');
  await expect(
    screen.card.getByText(/^The tapes to Tree 2 all run (nearly )?one way, so they/),
  ).toBeVisible();
  const { site } = await downloadSite(screen);
  const [spot] = featureNamed(site, 'Tree 2').vertices;
  expect(spot?.spot, 'the tapes are kept as they are').toMatchObject({ by: 'tapes' });
  expect(placeOf(site, 'Tree 2').x).toBeCloseTo(25, 0);
});

test('directions and curves that cannot be are refused with the value that is wrong', async ({
  page,
  hand,
}) => {
  const screen = new Screen(page, hand);
  const yard = new Yard(screen);
  const tooMuch = screen.card.getByText('95° is too much for a bearing; its angle goes up to 90°.');

  // in the measuring form
  await yard.draw('Boundary');
  await screen.press('Type how it was measured');
  await screen.choose('Measured by', 'Bearing and distance');
  await screen.choose('From', 'Pole');
  await screen.write('Bearing or azimuth', 'N 95 E');
  await screen.write('Distance', `40'`);
  await expect(tooMuch).toBeVisible();
  await expect(screen.button('Place this point')).toBeDisabled();
  await screen.write('Bearing or azimuth', 'N 85 E');
  await expect(tooMuch).toHaveCount(0);
  await screen.press('Place this point');

  // in a course: Enter adds nothing, and what was typed stays
  await screen.write('Bearing or azimuth', 'N 95 E');
  await screen.write('Length', '120.5');
  await page.keyboard.press('Enter');
  await expect(tooMuch).toBeVisible();
  await expect(screen.button('Finish')).toBeDisabled();
  await expect(screen.field('Bearing or azimuth')).toHaveValue('N 95 E');
  await expect(screen.field('Length')).toHaveValue('120.5');
  await screen.write('Bearing or azimuth', 'N 5 E');
  await page.keyboard.press('Enter');
  await expect(screen.field('Length')).toHaveValue('');

  // a quarter of a circle of 100 ft is 157.08 ft long, not 100
  await screen.press('A curve');
  await screen.write('Radius', '100');
  await screen.write('Length of the arc', '100');
  await screen.write('or central angle', '90');
  const contradiction = screen.card.getByText(/^Length and angle contradict each other/);
  await expect(contradiction).toBeVisible();
  const [computed, given] = [
    ...((await contradiction.textContent()) ?? '').matchAll(/\d+′[^,.]*?″?(?= long|\.)/gu),
  ];
  expect(Math.abs(feetOf(computed?.[0] ?? '') - (100 * Math.PI) / 2)).toBeLessThan(PRINTED_TO_FT);
  expect(feetOf(given?.[0] ?? '')).toBe(100);
  await expect(screen.button('Add this curve')).toBeDisabled();

  // put right, it is added, and the outline with it
  await screen.write('Length of the arc', '157.08');
  await expect(contradiction).toHaveCount(0);
  await screen.press('Add this curve');
  await yard.leg(bearing('S', 10, 0, 'E').text, dec('60').text);
  await yard.finish();
  const { site } = await downloadSite(screen);
  const drawn = featureNamed(site, 'Boundary 2').vertices.map((v) => v.spot.by);
  expect(drawn).toEqual(['bearing', 'course', 'arc', 'course']);
});

test('pictures that cannot be shown are refused by name, and the next one goes in', async ({
  page,
  hand,
}) => {
  const screen = new Screen(page, hand);
  const { site } = await downloadSite(screen);
  await screen.goTo('Yard');
  await screen.press('Picture under the plan');
  const add = async (name: string, buffer: Buffer) => {
    const dialog = page.waitForEvent('filechooser');
    await screen.press('Add a picture');
    await (await dialog).setFiles({ name, mimeType: 'application/octet-stream', buffer });
  };
  const alert = screen.card.getByRole('alert');
  for (const [name, buffer, said] of [
    ['nothing.png', Buffer.alloc(0), 'is empty'],
    ['IMG_0412.HEIC', pictureFiles.heic(), 'is a HEIC picture, which browsers cannot show'],
    ['renamed.jpg', pictureFiles.heic(), 'is a HEIC picture'],
    ['plat.pdf', Buffer.from('%PDF-1.7\n'), 'is a PDF'],
    ['notes.png', Buffer.from('buy couplings'), 'is not a picture'],
    ['cut.png', pictureFiles.cutPng(60, 40), 'begins like a PNG picture but is not whole'],
    ['county.png', pictureFiles.cutPng(12_000, 9_000), '12,000 × 9,000 pixels, 108 megapixels'],
  ] as const) {
    await add(name, buffer);
    await expect(alert, name).toContainText(`“${name}”`);
    await expect(alert, name).toContainText(said);
  }
  expect((await downloadSite(screen)).site, 'nothing came in, nothing was lost').toEqual(site);

  await screen.goTo('Yard');
  await expect(alert, 'what is the matter is still said').toContainText('“county.png”');
  await add('plat.png', pictureFiles.png(60, 40));
  await expect(screen.card.getByRole('region', { name: /^plat/ })).toBeVisible();
  await expect(alert).toHaveCount(0);
  const laid = (await downloadSite(screen)).site;
  expect(laid.underlays).toHaveLength(1);
  expect(laid.features).toEqual(site.features);
});

test('a device position of 60 m is named as too poor to turn the yard by', async ({
  page,
  hand,
  context,
}) => {
  const screen = new Screen(page, hand);
  await context.grantPermissions(['geolocation']);
  await context.setGeolocation({ latitude: 40.446195, longitude: -79.948862, accuracy: 60 });
  const { site } = await downloadSite(screen);
  await screen.goTo('Yard');
  await screen.press('North and place on the earth');
  await screen.press('Add a point');
  const form = screen.card.locator('form').filter({ hasText: 'Latitude and longitude' });
  await hand.press(form.getByRole('button', { name: 'Use this device’s position' }));
  await expect(form.getByRole('status')).toContainText('197 ft'); // 60 m is 196.85 ft
  await hand.press(form.getByRole('button', { name: 'Take this position' }));
  await expect(
    form.getByText(/197 ft is too poor for control: the position may lie outside of the yard/),
  ).toBeVisible();
  await screen.choose('Point of the site', 'Pole');
  await screen.press('Add the point');
  await expect(screen.card.getByText(/to 197 ft, from the device, too poor for north/)).toBeVisible();

  // it is kept with what the device said of it, and north is as it was
  const { site: kept } = await downloadSite(screen);
  const [control] = kept.frame.control;
  expect(control).toMatchObject({ latitudeDeg: 40.446195, longitudeDeg: -79.948862, source: 'device' });
  // the field rounds up to whole feet, never down
  expect(control?.accuracy).toBeGreaterThanOrEqual(60);
  expect(control?.accuracy).toBeLessThan(60 + FOOT_M);
  expect(kept.frame.north).toEqual(site.frame.north);
});
