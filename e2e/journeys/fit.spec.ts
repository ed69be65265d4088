import { misfitsOn } from '../src/fit';
import { expect, test } from '../src/fixtures';
import { Home } from '../src/Home';
import { keepPicture } from '../src/keepPicture';
import { Screen } from '../src/Screen';
import { Yard } from '../src/Yard';

test('nothing is cut off, too small or wider than the screen', async ({ page, hand }) => {
  const home = new Home(page, hand);
  const screen = new Screen(page, hand);
  const yard = new Yard(screen);
  const misfits: Record<string, readonly string[]> = {};
  const look = async (name: string) => {
    const found = await misfitsOn(page);
    if (found.length > 0) misfits[name] = found;
    await keepPicture(page, `fit-${name}`);
  };

  await home.open();
  await look('home-empty');
  await home.press('New site');
  await look('yard-empty');
  for (const step of ['Line', 'Runs', 'Marks'] as const) {
    await screen.goTo(step);
    await look(`${step.toLowerCase()}-empty`);
  }
  await hand.press(page.getByRole('button', { name: 'All sites' }));
  await home.press('Open the sample site');
  await look('yard');
  await screen.press('This site');
  await look('site-facts');
  await yard.draw('Tree');
  await screen.press('Type how it was measured');
  await screen.choose('Tape 1 from', 'House corner D');
  await look('draw-tree');
  await screen.choose('Measured by', 'Offset from a line');
  await look('draw-offset');
  await hand.press(screen.button('Cancel').first());
  await hand.press(screen.row('Sycamore'));
  await look('feature');
  await screen.goTo('Line');
  await look('line');
  await hand.press(screen.row('Lateral'));
  await look('path');
  await screen.goTo('Runs');
  await look('runs');
  await hand.press(screen.row('A'));
  await look('run');
  await hand.press(screen.row('A4'));
  await look('reading');
  await screen.goTo('Marks');
  await look('marks');
  await hand.press(screen.row('A8'));
  await screen.press('How this came about');
  await look('mark');
  await screen.goTo('Hand-off');
  await look('hand-off');
  await hand.press(page.getByRole('banner').getByRole('button', { name: /^Checks/ }));
  await look('checks');
  await hand.press(page.getByRole('button', { name: 'All sites' }));
  await look('home');
  expect(misfits).toEqual({});
});
