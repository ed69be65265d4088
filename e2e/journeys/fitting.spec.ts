import { expect, test } from '../src/fixtures';
import { downloadSite } from '../src/HandOff';
import { Home } from '../src/Home';
import { ft } from '../src/measuredYard';
import { typeReadings } from '../src/Runs';
import { Screen } from '../src/Screen';
import { derivedOf } from '../src/siteFile';
import { Yard } from '../src/Yard';

const FOOT_M = 0.3048; // exact, by the definition of the international foot
const INCH_M = 0.0254;

test('a drop at a fitting takes cable that does not show in plan, and its mark comes back by it', async ({
  page,
  hand,
}) => {
  const screen = new Screen(page, hand);
  const yard = new Yard(screen);
  const home = new Home(page, hand);
  await home.open();
  await home.press('New site');

  await yard.draw('Cleanout');
  await yard.measure({ by: 'coordinates', east: ft(0), north: ft(0) }, 'Place the cleanout');
  await yard.isOpen('Cleanout');

  // straight east, level: what the counter says is what lies in plan
  await screen.goTo('Line');
  await screen.press('Draw the pipe');
  await screen.choose('Use a point that is there', 'Cleanout');
  await yard.leg('N 90 E', '10');
  await yard.leg('R 0', '30');
  await yard.finish();
  await yard.isOpen('Lateral');
  await screen.fill('Slope', '0');
  await screen.goTo('Runs');
  await screen.press('Add a run');
  await screen.choose('Zeroed with the', 'Head in the pipe');
  await screen.write(/^A1: counter/, '');
  await typeReadings(screen, 'A', [{ counter: '20', seen: 'Crack' }]);
  const markEast = async () => {
    const { site } = await downloadSite(screen);
    return { site, feet: (derivedOf(site).marks[0]?.place?.at.x ?? Number.NaN) / FOOT_M };
  };
  const openBend = async () => {
    await screen.goTo('Line');
    await hand.press(screen.row('Lateral'));
    await hand.press(screen.card.getByRole('listitem').getByRole('button', { name: /^B/ }));
  };
  expect((await markEast()).feet).toBeCloseTo(20, 6);

  await openBend();
  await screen.fill('Drops straight down by', `2' 6"`);
  await screen.fill('Radius of this bend', `6"`);
  const { site, feet } = await markEast();
  expect(feet, '20 ft of cable less the 2 ft 6 in that hang in the drop').toBeCloseTo(17.5, 6);
  const bend = site.paths[0]?.vertices[1];
  expect(bend?.drop).toBeCloseTo(2.5 * FOOT_M, 9);
  expect(bend?.bendRadius).toBeCloseTo(6 * INCH_M, 9);

  // emptied again, it is as it was
  await openBend();
  await screen.fill('Drops straight down by', '');
  expect((await markEast()).feet).toBeCloseTo(20, 6);
});
