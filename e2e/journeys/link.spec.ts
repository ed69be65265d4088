import { Crew } from '../src/Crew';
import { expect, test } from '../src/fixtures';
import { downloadSite } from '../src/HandOff';
import { pointerHand } from '../src/hand';
import { keepPicture } from '../src/keepPicture';
import { openSample } from '../src/openSample';

test('a link takes the sketch to the crew, and what they found back to the office', async ({
  page,
  hand,
  browser,
  context,
}) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  const copied = () => page.evaluate(() => navigator.clipboard.readText());
  const screen = await openSample(page, hand);
  const { site } = await downloadSite(screen);
  await screen.press('Copy the link');
  await expect(screen.notice).toContainText('on the clipboard');
  const link = await copied();
  expect(link).toContain('#/link/');
  // what is behind the # never reaches a server
  expect(new URL(link).search).toBe('');

  await test.step('the code is one symbol, black on white', async () => {
    await screen.press('Show as a QR code');
    const dialog = page.getByRole('dialog');
    await expect(dialog.getByRole('img', { name: 'Code 1 of 1' })).toBeVisible();
    await keepPicture(page, 'qr');
    await hand.press(dialog.getByRole('button', { name: 'Done' }));
  });

  const other = await browser.newContext({ permissions: ['clipboard-read', 'clipboard-write'] });
  const crewPage = await other.newPage();
  const crewHand = pointerHand(crewPage, 'mouse');
  const crew = new Crew(crewPage, crewHand);
  const answer = await test.step('the crew opens it, ticks a mark and says what it found', async () => {
    await crewPage.goto(link);
    await expect(crewPage.getByRole('heading', { name: 'A plan has come' })).toBeVisible();
    await keepPicture(crewPage, 'plan-came');
    await crewHand.press(crewPage.getByRole('button', { name: 'Show the marks' }));
    await crew.goTo('A4');
    await crew.press('Painted');
    await crew.press('What we found');
    await crew.step('With the flow 1 ft', 1);
    await crew.press('Done');
    await crew.press('Send back');
    const dialog = crewPage.getByRole('dialog');
    await expect(dialog.getByRole('button').first()).toHaveText('Copy the link');
    await crewHand.press(dialog.getByRole('button', { name: 'Copy the link' }));
    await expect(dialog.getByRole('status')).toHaveText('Copied');
    await keepPicture(crewPage, 'send-back');
    return await crewPage.evaluate(() => navigator.clipboard.readText());
  });

  await test.step('the same link again leaves the ticks where they are', async () => {
    await crewPage.goto('about:blank');
    await crewPage.goto(link);
    await crewHand.press(crewPage.getByRole('button', { name: 'Show the marks' }));
    await crew.goTo('A4');
    expect(await crew.isTicked('Found')).toBe('true');
  });

  await test.step('the office opens the link that comes back, and takes it over', async () => {
    await screen.saved();
    await page.goto('about:blank');
    await page.goto(answer);
    await expect(page.getByRole('heading', { name: 'A crew’s answer has come' })).toBeVisible();
    await expect(page.getByRole('main')).toContainText('1 mark, 1 record, 0 photos');
    await hand.press(page.getByRole('button', { name: 'See what they found' }));
    const offer = screen.card.getByRole('region', { name: 'Answer' });
    await expect(offer).toContainText('1 mark, 1 record, 0 photos');
    // it was given the sketch alone, which is the same state of the site
    await expect(offer).not.toContainText('has changed since');
    await hand.press(offer.getByRole('button', { name: /^Take/ }).first());
    await expect(screen.notice).toContainText('Taken over');
    const taken = await downloadSite(screen);
    expect(taken.site.asFound).toHaveLength(1);
    expect(taken.site.id).toBe(site.id);
  });
  await other.close();
});

test('links that are cut, newer or not of this program open nothing and say why', async ({ page, hand }) => {
  const screen = await openSample(page, hand);
  await screen.goTo('Hand-off');
  await page.context().grantPermissions(['clipboard-read', 'clipboard-write']);
  await screen.press('Copy the link');
  const link = await page.evaluate(() => navigator.clipboard.readText());
  for (const [text, said] of [
    [link.slice(0, -200), 'cut off on the way'],
    [`${link.slice(0, -9)}A${link.slice(-8)}`, 'changed on the way'],
    [`${link.split('#/link/')[0]}#/link/hello-there`, 'not a link'],
  ] as const) {
    await page.goto('about:blank');
    await page.goto(text);
    await expect(page.getByRole('alert')).toContainText(said);
    await expect(page.getByRole('button', { name: 'Show the marks' })).toHaveCount(0);
  }
  await hand.press(page.getByRole('button', { name: 'All sites' }));
  await expect(page.getByRole('region', { name: 'Sites on this device' })).toContainText('Rear-alley');
});
