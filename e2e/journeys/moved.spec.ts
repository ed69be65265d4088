import { Digs } from '../src/Digs';
import { expect, test } from '../src/fixtures';
import { openSample } from '../src/openSample';
import { Plan } from '../src/Plan';
import { Yard } from '../src/Yard';

// On the desk alone: a finger that stays down in the middle of a drag has no hand here.

test('a tree that is moved says with every move what digs and pipes do to it', async ({ page, hand }) => {
  const screen = await openSample(page, hand);
  const digs = new Digs(screen);
  await screen.goTo('Route');
  await digs.trench('Lateral', '36', '60');
  const plan = new Plan(page, hand);
  const beside = await plan.share(0.62, 0.5);
  await screen.goTo('Yard');
  await new Yard(screen).draw('Tree');
  await hand.tap(beside);
  await screen.fill('Trunk diameter', '12');
  const concerns = screen.card.getByRole('region', { name: 'What concerns it' });
  const taken = /Takes (?:less than )?(\d+) % of the root zone of this tree/;
  const share = async () => Number(taken.exec((await concerns.textContent()) ?? '')?.[1] ?? 0);

  // on the dig's middle, where it was brought into view
  const middle = await plan.share(0.5, 0.5);
  await page.mouse.move(beside.x, beside.y);
  await page.mouse.down();
  const seen = new Set<number>();
  for (let i = 1; i <= 10; i++) {
    await page.mouse.move(beside.x + ((middle.x - beside.x) * i) / 10, beside.y);
    await page.waitForTimeout(60);
    seen.add(await share());
  }
  await expect(concerns).toContainText('The trunk of this tree stands in the cut');
  expect(seen.size, 'shares told on the way').toBeGreaterThan(4);
  const last = await share();
  await page.mouse.up();
  // let go, the whole site says the same
  await expect(concerns).toContainText('The trunk of this tree stands in the cut');
  expect(await share()).toBe(last);
  expect(await screen.undo()).toBe('Move Tree');
});
