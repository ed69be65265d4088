import { expect, test } from '../src/counted';
import { Home } from '../src/Home';
import { Screen } from '../src/Screen';

test('the first mark of the sample site', async ({ page, hand, walk }) => {
  const home = new Home(page, hand);
  const screen = new Screen(page, hand);
  await home.open();
  walk.start();
  await home.press('Open the sample site');
  await walk.picture(page, 'sample');
  await screen.goTo('Marks');
  await walk.picture(page, 'marks');
  // the first that tapes reach: the run begins under the house
  await hand.press(
    screen
      .row('A')
      .filter({ hasText: /tapes \d/ })
      .first(),
  );
  const mark = screen.card.getByRole('region', { name: /^Mark A/ });
  await expect(mark).toBeVisible();
  for (const tape of ['First tape', 'Second tape', 'To check']) await expect(mark).toContainText(tape);
  await walk.picture(page, 'mark');
});
