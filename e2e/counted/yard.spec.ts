import { houseWalls, tenMinuteRun, tenMinuteYard } from '../fixtures/tenMinuteYard';
import { expect, test } from '../src/counted';
import { downloadSite } from '../src/HandOff';
import { Home } from '../src/Home';
import { tapesOn } from '../src/Marks';
import { dec, type MeasuredThing } from '../src/measuredYard';
import { misplaced } from '../src/misplaced';
import { Plan } from '../src/Plan';
import { readingRow, type Typed, typeReadings } from '../src/Runs';
import { Screen } from '../src/Screen';
import { derivedOf, placeOf } from '../src/siteFile';
import { Yard } from '../src/Yard';

const FOOT_M = 0.3048; // exact, by the definition of the international foot
/** Taps, clicks, drags and fields that a yard may take. */
const MOST_ACTIONS = 150;

test('a yard in ten minutes, from a written list to marks', async ({ page, hand, hasTouch, walk }) => {
  const home = new Home(page, hand);
  const screen = new Screen(page, hand);
  const yard = new Yard(screen);
  const plan = new Plan(page, hand);
  await home.open();
  await walk.picture(page, 'home');
  walk.start();
  await home.press('New site');
  await walk.picture(page, 'empty-yard');

  await yard.draw('Building');
  await walk.picture(page, 'draw-building');
  await hand.tap(await plan.share(0.3, 0.25));
  for (const { direction, length } of houseWalls) await yard.leg(direction.text, length.text);
  await walk.picture(page, 'house-walls');
  await yard.finish();
  await yard.rename('House');
  await walk.picture(page, 'house');
  await yard.back();
  for (const thing of tenMinuteYard) {
    await yard.enter(thing);
    await walk.picture(page, thing.name.toLowerCase().replaceAll(' ', '-'));
    if (thing.kind !== 'Pipe') await yard.back();
  }

  await screen.goTo('Runs');
  await screen.press('Add a run');
  await walk.picture(page, 'run');
  if (hasTouch) await tapReadings(screen, tenMinuteRun);
  else {
    await screen.write(/^A1: counter/, '');
    await typeReadings(screen, 'A', tenMinuteRun);
  }
  await walk.picture(page, 'readings');

  await screen.goTo('Marks');
  await walk.picture(page, 'marks');
  await hand.press(screen.row('A2'));
  const mark = screen.card.getByRole('region', { name: 'Mark A2' });
  await expect(mark).toBeVisible();
  await walk.picture(page, 'mark');

  await walk.aside(async () => {
    expect((await tapesOn(mark)).length).toBe(3);
    const { site } = await downloadSite(screen);
    expect(misplaced(site, [houseAt(placeOf(site, 'House')), ...tenMinuteYard])).toEqual([]);
    expect(derivedOf(site).marks.map((m) => m.place !== null)).toEqual(tenMinuteRun.map(() => true));
  });
  expect(walk.counts.actions).toBeLessThan(MOST_ACTIONS);
});

/** The house as it was measured, from where its first corner was put by eye. */
function houseAt(at: { readonly x: number; readonly y: number }): MeasuredThing {
  const feet = (metres: number) => dec(String(metres / FOOT_M));
  const first = { by: 'coordinates', east: feet(at.x), north: feet(at.y) } as const;
  return { kind: 'Building', name: 'House', shape: 'area', points: [first, ...houseWalls] };
}

/** Takes readings down by fingers: what was seen stays as it was for the one before. */
async function tapReadings(screen: Screen, readings: readonly Typed[]): Promise<void> {
  for (const [i, { counter, seen, clock = '' }] of readings.entries()) {
    const label = `A${i + 1}`;
    await screen.write(new RegExp(`^${label}: counter`), counter);
    const before = readings[i - 1]?.seen ?? 'Roots';
    if (seen !== before) await screen.choose('Seen', seen);
    if (clock !== '') await screen.write(/^On the wall/, clock);
    await screen.press(`Add ${label}`);
    await expect(readingRow(screen, label)).toBeVisible();
  }
}
