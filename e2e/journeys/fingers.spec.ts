import { practicePlaces } from '../fixtures/practiceYard';
import { downloadSite } from '../src/HandOff';
import { expect, test } from '../src/practice';
import { placeOf } from '../src/siteFile';

const { pole, hydrant, tree } = practicePlaces;

test('fingers gather things by a long press or with the toggle, and drag them', async ({
  page,
  hand,
  practice,
}) => {
  const { screen, yard, plan } = practice;
  const things = (n: number) => screen.card.getByRole('region', { name: `${n} things`, exact: true });

  await plan.tap(pole);
  await yard.isOpen('Pole');
  await plan.longPress(hydrant);
  await expect(things(2)).toContainText('Pole, Hydrant');
  await plan.longPress(pole);
  await yard.isOpen('Hydrant');
  await screen.press('Yard');

  // the toggle makes every tap gather, until it is pressed again
  const several = page.getByRole('button', { name: 'Choose several', exact: true });
  await hand.press(several);
  for (const at of [pole, tree]) await plan.tap(at);
  await expect(things(2)).toContainText('Pole, Tree');
  await plan.tap(hydrant);
  await expect(things(3)).toBeVisible();
  await plan.tap(tree);
  await expect(things(2)).toContainText('Pole, Hydrant');
  await hand.press(several);
  await expect(several).toHaveAttribute('aria-pressed', 'false');

  // both follow the finger that drags one
  await plan.drag(pole, { x: pole.x + 4, y: pole.y + 3 });
  const { site } = await downloadSite(screen);
  const moved = { x: placeOf(site, 'Pole').x - pole.x, y: placeOf(site, 'Pole').y - pole.y };
  expect(moved.x).toBeCloseTo(4, 1);
  expect(moved.y).toBeCloseTo(3, 1);
  expect(placeOf(site, 'Hydrant').x).toBeCloseTo(hydrant.x + moved.x, 9);
  expect(placeOf(site, 'Hydrant').y).toBeCloseTo(hydrant.y + moved.y, 9);
  expect(placeOf(site, 'Tree')).toEqual(tree);
});
