import type { Derived, Site } from '../../packages/site/src/index';
import { expect, test } from '../src/fixtures';
import { downloadSite } from '../src/HandOff';
import { openSample } from '../src/openSample';
import { derivedOf } from '../src/siteFile';

const FT = 0.3048;

/** Decimal feet in a text such as `they are 1.7 ft apart`. */
function feetIn(text: string | null, before: RegExp): number {
  return Number(new RegExp(`${before.source}([\\d.]+) ft`).exec(text ?? '')?.[1]);
}

function placeOfMark({ marks }: Derived, label: string) {
  const place = marks.find((m) => m.label === label)?.place;
  if (!place) throw new Error(`${label} has no place`);
  return place;
}

/** Feet along the pipe between two marks. */
function apart(derived: Derived, a: string, b: string): number {
  return Math.abs(placeOfMark(derived, a).station - placeOfMark(derived, b).station) / FT;
}

/** Root mean square (ft) of how far the computed places of the sonde are from where it was found. */
function missed(site: Site, but: ReadonlySet<string>): number {
  const { locates } = derivedOf(site);
  const counted = locates.filter((l) => !but.has(l.feature));
  return Math.sqrt(counted.reduce((sum, l) => sum + l.distance ** 2, 0) / counted.length) / FT;
}

test('two runs that disagree are paired, checked and weighed; the fit is taken, undone and redone', async ({
  page,
  hand,
}) => {
  test.setTimeout(120_000);
  const screen = await openSample(page, hand);
  const drawn = (await downloadSite(screen)).site;
  const derived = derivedOf(drawn);

  await test.step('the marks say how the evidence stands, and that two runs may have seen the same', async () => {
    await screen.goTo('Marks');
    await expect(screen.card).toContainText(/\d+ pieces of evidence agree\./);
    await expect(screen.card).toContainText('2 things may have been seen from two runs.');
    await screen.press('See how it agrees');
  });
  const agree = screen.card.getByRole('region', { name: 'How it agrees' });
  const pairs = agree.getByRole('listitem').filter({ hasText: 'As shown they are' });

  await test.step('what the two runs saw is paired; how far they are apart is what the plan has', async () => {
    for (const [a, b] of [
      ['A10', 'B4'],
      ['A9', 'B5'],
    ] as const) {
      const row = pairs.filter({ hasText: `${a} and ${b}` });
      const said = feetIn(await row.textContent(), /As shown they are /);
      expect(said).toBeCloseTo(apart(derived, a, b), 1);
      expect(said).toBeGreaterThan(1);
      await screen.press(`Same thing: ${a} and ${b}`);
      await expect(row).toContainText('One thing. As shown they are');
    }
    await expect(agree).toContainText(/8 pieces of evidence agree\./);
    const [first] = await agree.getByRole('button', { name: 'What alone would explain it' }).all();
    if (first === undefined) throw new Error('nothing explains the closure');
    await hand.press(first);
    // both runs say by their counters that the way from entry to entry is shorter than drawn
    await expect(agree).toContainText(
      /The pipe between the two entries would have to be [\d.]+ ft long, 1\.5 ft less/,
    );
    await screen.press('Close');
  });

  await test.step('a locate with a slip in it is named, and what it would have to be', async () => {
    await hand.press(screen.row('A7'));
    await screen.press('Found with the receiver again');
    await screen.choose('Measured by', 'Coordinates');
    const { at } = placeOfMark(derived, 'A7');
    await screen.write('East (x)', (at.x / FT).toFixed(2));
    await screen.write('North (y)', (at.y / FT - 7).toFixed(2));
    await screen.press('Add the locate');
    // how far off it is stands there at once
    await expect(
      screen.card.getByRole('button', { name: /from where it was computed/ }).last(),
    ).toBeFocused();
    await screen.press('Marks');
    await expect(screen.card).toContainText(/Locate at A7 \(.*\) (does not fit|fits least)/);
    await screen.press('See how it agrees');
    const suspect = agree.getByRole('checkbox', { name: /^Locate at A7 .* counts$/ }).first();
    await expect(suspect).toBeChecked();
    // the pipe flows north there, and the locate was put 7 ft to the south
    const named = agree.getByRole('button', { name: /^Locate at A7 .*Off by .* times what is usual/ });
    expect(Math.abs(feetIn(await named.textContent(), /It would have to be /) - 7)).toBeLessThan(1.5);
    await expect(named).toContainText('further downstream');

    // set aside to see, and taken back
    await hand.mark(suspect);
    await expect(agree).toContainText(/8 pieces of evidence agree\./);
    const aside = agree.getByRole('checkbox', { name: /^Locate at A7 .* counts$/ });
    await expect(aside).not.toBeChecked();
    await expect(agree.getByRole('listitem').filter({ hasText: 'set aside' })).toHaveCount(1);
    await hand.mark(aside);
    await expect(named).toBeVisible();
    await screen.press(/^Check it: Locate at A7/);
    await expect(screen.card.getByRole('button', { name: 'Correct the measurement' })).toBeVisible();
    await screen.goTo('Marks');
    await screen.press('See how it agrees');
    expect(await screen.undo()).toMatch(/^Count again: Locate at A7/);
    await expect(agree).toContainText(/8 pieces of evidence agree\./);
  });

  const before = (await downloadSite(screen)).site;
  const slipped = new Set(
    before.features.filter((f) => f.kind === 'locate' && f.name !== '').map((f) => f.id),
  );
  expect(slipped.size).toBe(1);
  await screen.goTo('Marks');
  await test.step('the fit is taken: the marks come nearer to what the receiver found, and the runs agree', async () => {
    await screen.press('Take the fit');
    await expect(screen.button('Back to as drawn')).toBeVisible();
    await expect(screen.card).toContainText('The marks stand where it puts them.');
  });
  const taken = (await downloadSite(screen)).site;
  expect(missed(taken, slipped)).toBeLessThan(missed(before, slipped) * 0.8);
  for (const [a, b] of [
    ['A10', 'B4'],
    ['A9', 'B5'],
  ] as const) {
    expect(apart(derivedOf(taken), a, b)).toBeLessThan(apart(derived, a, b) / 3);
  }

  await test.step('it is undone and redone like any other edit', async () => {
    expect(await screen.undo()).toBe('Take the fit');
    expect((await downloadSite(screen)).site).toEqual(before);
    expect(await screen.redo()).toBe('Take the fit');
    expect((await downloadSite(screen)).site).toEqual(taken);
    await screen.goTo('Marks');
    await screen.press('Back to as drawn');
    await expect(screen.button('Take the fit')).toBeVisible();
    expect((await downloadSite(screen)).site.paths).toEqual(before.paths);
  });
});

test('a mark is found, painted beside and dug, and says so in the list', async ({ page, hand }) => {
  const screen = await openSample(page, hand);
  await screen.goTo('Marks');
  await expect(screen.row('A8')).toContainText('Computed');
  await hand.press(screen.row('A8'));
  const mark = screen.card.getByRole('region', { name: 'Mark A8' });

  // by finger: the tap on the plan is the locate, and the mark's card is back
  await screen.press('Found with the receiver here');
  await screen.pick(/^Where that is/, 'By finger');
  await screen.press('Tap it on the plan');
  const plan = page.getByRole('main', { name: 'Plan' });
  const box = await plan.boundingBox();
  if (box === null) throw new Error('there is no plan');
  await hand.tap({ x: box.x + box.width * 0.55, y: box.y + box.height * 0.45 });
  await expect(mark).toContainText(/from where it was computed:.*Peak and null agree, both ways\./s);

  await screen.pick(/^On the ground/, 'Painted');
  await expect(mark.getByLabel('Painted on')).toHaveValue(/^\d{4}-\d\d-\d\d$/);
  await screen.press('Paint stands elsewhere');
  await screen.pick(/^Which way from the mark/, 'E');
  await screen.fill('How far', '4');
  await expect(mark).toContainText(
    'Paint stands 4.0 ft to the east of the mark. The tapes are to the paint.',
  );

  const { site } = await downloadSite(screen);
  const reading = site.runs[0]?.readings.find((r) => r.number === 8);
  expect(reading).toMatchObject({
    ground: { state: 'painted' },
    offset: { distance: expect.closeTo(4 * FT, 9), azimuth: expect.closeTo(Math.PI / 2, 9) },
  });
  const place = placeOfMark(derivedOf(site), 'A8');
  expect(place.paint?.at.x).toBeCloseTo(place.at.x + 4 * FT, 9);
  const located = site.features.filter(
    (f) => f.kind === 'locate' && f.fields.reading?.reading === reading?.id,
  );
  expect(located).toMatchObject([{ fields: { method: 'crossed' } }]);

  await screen.goTo('Marks');
  await expect(screen.row('A8')).toContainText('Painted');
  await hand.press(screen.row('A8'));
  await screen.pick(/^On the ground/, 'Not yet');
  await screen.press('Marks');
  await expect(screen.row('A8')).toContainText('Located');
});

test('readings that are no pair are refused; a wrong pair is said with all that it cannot be told from', async ({
  page,
  hand,
}) => {
  const screen = await openSample(page, hand);
  await screen.goTo('Marks');
  await screen.press('See how it agrees');
  const agree = screen.card.getByRole('region', { name: 'How it agrees' });
  await screen.press('Pair two other readings');
  const pick = async (label: string, mark: string) => {
    await hand.press(screen.chooser(label));
    await hand.press(page.getByRole('option', { name: new RegExp(`^${mark},`) }));
  };
  await pick('This reading', 'A8');
  await pick('saw the same as', 'A8');
  await expect(agree).toContainText('That is the same reading twice.');
  await expect(screen.button('Same thing')).toBeDisabled();
  await pick('saw the same as', 'A9');
  await expect(agree).toContainText('Both are of one run.');
  await pick('saw the same as', 'B4');
  await screen.press('Same thing');

  // two cameras stood 2 m apart at it: the pair is wrong or one of the two counters, and no arithmetic tells which
  await expect(agree).toContainText('One of these is wrong. Nothing tells which.');
  for (const name of ['A8 and B4 as one thing', 'The counter at A8', 'The counter at B4']) {
    await expect(agree.getByRole('checkbox', { name: `${name} counts` }).first()).toBeChecked();
  }
  await screen.press('A8 and B4 are not one thing after all');
  await expect(agree).toContainText(/6 pieces of evidence agree\./);
  await screen.press('Not the same: A9 and B5');
  await expect(agree.getByRole('listitem').filter({ hasText: 'A9 and B5' })).toHaveCount(0);
  expect(await screen.undo()).toBe('Not the same: A9 and B5');
  await expect(agree.getByRole('listitem').filter({ hasText: 'A9 and B5' })).toHaveCount(1);

  // how sure the directions of the line are makes the holes: a surer one here, a smaller hole
  await screen.press('How sure things are');
  const sure = 'Direction of a pipe told as a course or a turn';
  await screen.fill(sure, '0.5°');
  await screen.press('Close');
  const hole = async () => Number(/× ([\d.]+) ft/.exec((await screen.row('A10').textContent()) ?? '')?.[1]);
  await expect.poll(hole).toBe(12);
  expect(await screen.undo()).toBe(`Change how sure: ${sure.toLowerCase()}`);
  await expect.poll(hole).toBe(17);
});
