import { rowanYard, slip } from '../fixtures/rowan-yard';
import { PRINTED_TO_FT } from '../src/feetInches';
import { expect, test } from '../src/fixtures';
import { downloadSite } from '../src/HandOff';
import { Home } from '../src/Home';
import type { Hand } from '../src/hand';
import { factOn, feetOn } from '../src/Marks';
import type { MeasuredThing } from '../src/measuredYard';
import { misplaced } from '../src/misplaced';
import { closureOf } from '../src/plane';
import { Screen } from '../src/Screen';
import { derivedOf } from '../src/siteFile';
import { keptIn, keptOf } from '../src/spotsOf';
import { Yard } from '../src/Yard';

const FOOT_M = 0.3048; // exact, by the definition of the international foot

/** What a crew with a phone enters before the rain. */
const SHORT = ['Nail', 'House', 'Front cleanout', 'Stack', 'Rowan', 'Plum', 'Pole', 'Gas'];

test('a yard from a written list comes out to a millimetre, and a slip is put right', async ({
  page,
  hand,
  keys,
  hasTouch,
}) => {
  test.setTimeout(180_000);
  // on a desk without a pointer, on a phone by fingers
  const by: Hand = hasTouch ? hand : keys;
  const home = new Home(page, by);
  const screen = new Screen(page, by);
  const yard = new Yard(screen);
  const listed = (things: readonly MeasuredThing[]) =>
    hasTouch ? things.filter(({ name }) => SHORT.includes(name)) : things;
  const asWritten = listed(rowanYard.asWritten);

  await home.open();
  await home.press('New site');
  const bare = (await downloadSite(screen)).site;
  await screen.goTo('Yard');
  for (const thing of asWritten) {
    await yard.enter(thing);
    if (thing.closing !== undefined) {
      const { perimeter, misclosure } = closureOf(thing);
      const ratio = Math.round(perimeter / misclosure).toLocaleString('en-US');
      await expect(factOn(screen.card, 'Ratio')).toHaveText(`1:${ratio}`);
      for (const [term, metres] of Object.entries({ Misclosure: misclosure, Round: perimeter })) {
        const off = (await feetOn(screen.card, term)) - metres / FOOT_M;
        expect(Math.abs(off), term).toBeLessThan(PRINTED_TO_FT);
      }
    }
    await screen.press(thing.kind === 'Pipe' ? 'Line' : 'Yard');
  }
  const written = (await downloadSite(screen)).site;
  expect(misplaced(written, asWritten)).toEqual([]);
  expect(keptIn(written, asWritten)).toEqual(keptOf(asWritten, written));
  // all is measured, so nothing shows as assumed
  for (const point of derivedOf(written).points.values()) expect(point.measured).toBe(true);

  // the third tape to the plum shows that something is wrong
  const checks = page.getByRole('banner').getByRole('button', { name: /^Checks: / });
  await by.press(checks);
  const disagrees = screen.card.getByRole('button', { name: /^The tapes to Plum disagree: / });
  await expect(disagrees).toBeVisible();

  // the wall is put right, and all that hangs on it follows
  await screen.goTo('Yard');
  await by.press(screen.row(slip.house));
  await by.press(
    screen.card.getByRole('button', { name: new RegExp(`^Length from ${slip.from} to ${slip.to},`) }),
  );
  await screen.write('Length', slip.right.text);
  await screen.pick(/^Which end stays/, slip.from);
  await screen.press('Change the length');
  const corrected = listed(rowanYard.corrected);
  const { site: right, text } = await downloadSite(screen);
  expect(misplaced(right, corrected)).toEqual([]);
  expect(keptIn(right, corrected)).toEqual(keptOf(corrected, right));
  expect(misplaced(right, asWritten).length, 'points that the wall moved').toBeGreaterThan(5);
  await by.press(checks);
  await expect(screen.card.getByRole('region', { name: 'Checks' })).toBeVisible();
  await expect(disagrees).toHaveCount(0);

  // back to the empty yard and forth again by the history
  const history = async (step: RegExp | 'first') => {
    await by.press(page.getByRole('banner').getByRole('button', { name: 'More' }));
    await by.press(page.getByRole('menuitem', { name: 'History' }));
    const card = screen.card.getByRole('region', { name: 'History' });
    const steps = card.getByRole('listitem').getByRole('button');
    await by.press(step === 'first' ? steps.first() : steps.filter({ hasText: step }));
    await screen.press('Close');
  };
  await history(/^As it was opened$/);
  expect((await downloadSite(screen)).site).toEqual(bare);
  await history('first');
  expect((await downloadSite(screen)).text).toBe(text);

  // and it is all on the device
  await screen.saved();
  await page.reload();
  await expect(page.getByRole('main', { name: 'Plan' })).toBeVisible();
  expect((await downloadSite(screen)).text).toBe(text);
});
