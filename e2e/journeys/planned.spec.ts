import { downloadSite } from '../src/HandOff';
import { paintedWhile } from '../src/painted';
import { expect, test } from '../src/practice';
import { derivedOf } from '../src/siteFile';

const EIGHTH = Math.PI / 4;

test('a point of a planned pipe is drawn by the hand to where the pipe turns by standard bends', async ({
  page,
  practice,
}) => {
  const { screen, plan } = practice;
  await screen.goTo('Line');
  await screen.press('Draw the pipe');
  // north, aside to the east, and north again; the third point is a little off where two eighth bends would make the offset
  for (const at of [
    { x: 24, y: 2 },
    { x: 24, y: 6 },
    { x: 26, y: 9 },
    { x: 26, y: 13 },
  ])
    await plan.tap(at);
  await screen.press('Finish');
  await screen.choose('State', 'Proposed');
  await expect(screen.card).toContainText('Can it be laid so?');
  await expect(screen.card).toContainText('which no standard bend does');

  const [from, to] = [plan.onScreen({ x: 26, y: 9 }), plan.onScreen({ x: 26.1, y: 8.1 })];
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  const said = await paintedWhile(page, () => page.mouse.move(to.x, to.y, { steps: 4 }));
  expect(said).toContain('45° right');
  expect(said).toContain('45° left');
  await page.mouse.up();

  const { site } = await downloadSite(screen);
  const [a, b, c, d] = derivedOf(site).paths.get(site.paths[0]?.id ?? '')?.points ?? [];
  if (a === undefined || b === undefined || c === undefined || d === undefined) throw new Error('no pipe');
  const heading = (p: typeof a, q: typeof a) => Math.atan2(q.x - p.x, q.y - p.y);
  expect(heading(b, c) - heading(a, b)).toBeCloseTo(EIGHTH, 6);
  expect(heading(b, c) - heading(c, d)).toBeCloseTo(EIGHTH, 6);
  await screen.goTo('Line');
  await expect(screen.card).not.toContainText('which no standard bend does');
});
