import type { Site } from '../../packages/site/src/index';
import { expect, test } from '../src/counted';
import { downloadSite } from '../src/HandOff';
import { openSample } from '../src/openSample';
import type { Screen } from '../src/Screen';
import { derivedOf, placeOf } from '../src/siteFile';

const FOOT_M = 0.3048; // exact, by the definition of the international foot
/** How much too short one of the tapes to the sonde was read. */
const SLIP_FT = 5;
const FROM = {
  first: { name: 'Garage slab corner C', of: 'Garage slab', corner: 'c' },
  second: { name: 'Power pole', of: 'Power pole', corner: 'a' },
} as const;

test('the sonde disagrees with the tape: why, and put right', async ({ page, hand, walk }) => {
  const screen = await openSample(page, hand);
  const site = await walk.aside(async () => (await downloadSite(screen)).site);
  const tapes = tapesTo(site, 'A7');
  await screen.goTo('Marks');
  walk.start();
  await hand.press(screen.row('A7'));
  await walk.picture(page, 'mark');
  await screen.press('Found with the receiver again');
  await walk.picture(page, 'locate');
  await screen.choose('Tape 1 from', FROM.first.name);
  await screen.write('Length', tapes.first.toFixed(1));
  await screen.choose('Tape 2 from', FROM.second.name);
  await screen.write('Length', (tapes.second - SLIP_FT).toFixed(1), 1);
  await screen.pick(/^Side/, tapes.side);
  await walk.picture(page, 'locate-typed');
  await screen.press('Add the locate');
  await walk.picture(page, 'disagrees');

  await screen.press('Marks');
  await expect(screen.card).toContainText(/Locate at A7 \(.*\) (does not fit|fits least)/);
  await walk.picture(page, 'told');
  await screen.press('See how it agrees');
  const agree = screen.card.getByRole('region', { name: 'How it agrees' });
  const named = agree.getByRole('button', { name: /^Locate at A7 .*Off by .* times what is usual/ });
  await expect(named).toBeVisible();
  await walk.picture(page, 'why');
  await hand.press(named);
  await walk.picture(page, 'where');
  await screen.press(/^Check it: Locate at A7/);
  await walk.picture(page, 'slip');
  await correct(screen, tapes.second.toFixed(1));
  await screen.goTo('Marks');
  await expect(screen.card).toContainText(/\d+ pieces of evidence agree\./);
  await walk.picture(page, 'agrees');
});

async function correct(screen: Screen, length: string): Promise<void> {
  await screen.press('Correct the measurement');
  await screen.write('Length', length, 1);
  await screen.page.keyboard.press('Enter');
}

/** The tapes to a mark from two corners that nothing hangs over (ft), as the mark's own card names them, and on which side it lies. */
function tapesTo(site: Site, label: string) {
  const place = derivedOf(site).marks.find((m) => m.label === label)?.place;
  if (!place) throw new Error(`${label} has no place`);
  const at = (of: string, corner: string) => placeOf(site, of, corner);
  const [a, b] = [at(FROM.first.of, FROM.first.corner), at(FROM.second.of, FROM.second.corner)];
  const feet = (from: typeof a) => Math.hypot(place.at.x - from.x, place.at.y - from.y) / FOOT_M;
  const turn = (b.x - a.x) * (place.at.y - a.y) - (b.y - a.y) * (place.at.x - a.x);
  return { first: feet(a), second: feet(b), side: turn < 0 ? 'Right' : 'Left' } as const;
}
