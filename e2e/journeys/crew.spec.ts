import { readFile } from 'node:fs/promises';
import type { BrowserContext, ConsoleMessage, Download, FileChooser } from '@playwright/test';
import { Crew } from '../src/Crew';
import { expect, test } from '../src/fixtures';
import { downloadSite } from '../src/HandOff';
import { pointerHand } from '../src/hand';
import { keepPicture } from '../src/keepPicture';
import { openSample } from '../src/openSample';
import { pictureFiles } from '../src/pictureFiles';
import { faintTexts, smallTargets } from '../src/readable';
import { derivedOf, siteIn } from '../src/siteFile';

const FOOT_M = 0.3048;
const GLOVE_PX = 56;
const SUN_CONTRAST = 7;
const SITE = 'Rear-alley lateral';

/** What the page of a second device says that it should not. */
function hearing(context: BrowserContext): readonly string[] {
  const heard: string[] = [];
  context.on('weberror', (error) => heard.push(error.error().message));
  context.on('console', (message) => {
    if (message.type() === 'error' && !saysNoNetwork(message)) heard.push(message.text());
  });
  return heard;
}

/** With the network off a browser may say so, also when it was about to look for a newer program: no line of a script says that. */
function saysNoNetwork(message: ConsoleMessage): boolean {
  const text = message.text();
  if (/ERR_INTERNET_DISCONNECTED/.test(text)) return true;
  return /when fetching the script\.$/.test(text) && message.location().url === '';
}

const asFile = (name: string, text: string) => ({
  name,
  mimeType: 'application/json',
  buffer: Buffer.from(text),
});

test('from the locator to the crew, who has no network, and back to the office', async ({
  page,
  hand,
  browser,
  hasTouch,
}) => {
  test.setTimeout(150_000);
  const screen = await openSample(page, hand);
  const sent = await downloadSite(screen);
  const marks = derivedOf(sent.site).marks.filter((m) => m.place !== null);
  const a4 = marks.find((m) => m.label === 'A4')?.place;
  if (!a4?.ties) throw new Error('the sample’s A4 has tapes');
  const { ties } = a4;

  const context = await browser.newContext();
  const heard = hearing(context);
  const crewPage = await context.newPage();
  const crew = new Crew(crewPage, pointerHand(crewPage, hasTouch ? 'touch' : 'mouse'));

  await test.step('the crew opens the file, and has all that it needs without a network', async () => {
    await crew.take(asFile('site.json', sent.text), SITE);
    await context.setOffline(true);
    await expect(crewPage.getByText(`1 of ${marks.length}`)).toBeVisible();
    await crew.goTo('A4');
    for (const tie of ties.pair) {
      const [from, to] = [tie.from.at, a4.at];
      // a tape is the straight line on the plan, told in hundredths of a foot
      const feet = Math.hypot(from.x - to.x, from.y - to.y) / FOOT_M;
      expect(Math.abs(feet - tie.distance / FOOT_M)).toBeLessThan(1e-9);
      await expect(crew.sheet).toContainText(`${feet.toFixed(2)} ft`);
    }
    await expect(crew.sheet).toContainText(
      'Gas service: in the hole, its top about 2.0 ft deep. Dig by hand.',
    );
    await expect(crew.sheet).toContainText('Call 811 first');
    await expect(crew.sheet).toContainText('One-call ticket: none kept.');
    await keepPicture(crewPage, 'crew-mark');
  });

  await test.step('for gloves and sun: large targets, strong text, nothing to scroll to', async () => {
    for (const theme of ['paper', 'night', 'sun']) {
      await expect(crewPage.locator('html')).toHaveAttribute('data-theme', theme);
      expect((await faintTexts(crewPage, SUN_CONTRAST)).faint).toEqual([]);
      await crew.press('Paper, night or sun colours');
    }
    expect(await smallTargets(crewPage, GLOVE_PX)).toEqual([]);
    expect(await crew.sheet.evaluate((e) => e.scrollHeight - e.clientHeight)).toBeLessThanOrEqual(0);
    await expect(crew.button('Next mark')).toBeInViewport({ ratio: 1 });
  });

  await test.step('it ticks, and puts down what it found with a photo', async () => {
    await crew.press('Painted');
    await crew.press('What we found');
    await crew.step('With the flow 1 ft', 1);
    await crew.step('Left 0.1 ft', 2);
    // said before anything is measured, it holds for what is
    await crew.hand.press(crew.sheet.getByText('To the invert'));
    await crew.step('More 0.1 ft', 1);
    await expect(crew.sheet.getByRole('radio', { name: 'To the invert' })).toBeChecked();
    await crew.hand.choose(crew.button(/What it was$/), 'Roots');
    const picture = crewPage.waitForEvent('filechooser');
    await crew.press('Take a photo');
    await (await picture).setFiles({
      name: 'hole.png',
      mimeType: 'image/png',
      buffer: pictureFiles.png(64, 48),
    });
    await expect(crew.button('Remove this photo')).toBeVisible();
    await expect(crew.sheet).toContainText('1.0 ft with the flow');
    await expect(crew.sheet).toContainText('0.2 ft to the left');
    expect((await faintTexts(crewPage, SUN_CONTRAST)).faint).toEqual([]);
    expect(await smallTargets(crewPage, GLOVE_PX)).toEqual([]);
    await keepPicture(crewPage, 'crew-found');
    await crew.press('Done');
    expect(await crew.isTicked('Found')).toBe('true');
  });

  await test.step('a tick is taken back, a mark that is not there is told, and all is kept at once', async () => {
    await crew.press('Next mark');
    await crew.press('Dug');
    await crew.press('Dug');
    expect(await crew.isTicked('Dug')).toBe('false');
    await crew.press('Not found');
    await context.setOffline(false);
    await crewPage.reload();
    await context.setOffline(true);
    await crew.goTo('A4');
    expect(await crew.isTicked('Found')).toBe('true');
    await crew.goTo('A5');
    expect(await crew.isTicked('Not found')).toBe('true');
  });

  await test.step('a second tab takes nothing down unless it is asked to, and then the first stops', async () => {
    await context.setOffline(false);
    const second = await context.newPage();
    await second.goto(crewPage.url());
    await expect(second.getByText('open in another tab')).toBeVisible();
    await second.getByRole('button', { name: 'Go on in this tab' }).click();
    await expect(second.getByRole('button', { name: 'Send back' })).toBeVisible();
    await expect(crewPage.getByText('open in another tab')).toBeVisible();
    await crew.press('Go on in this tab');
    await expect(crew.button('Send back')).toBeVisible();
    await second.close();
    await context.setOffline(true);
  });

  const files = await test.step('it hands its answer back as a file, with the photo beside it', async () => {
    await crew.press('Send back');
    const dialog = crewPage.getByRole('dialog');
    await crew.hand.write(dialog.getByRole('textbox'), 'Night shift');
    await crewPage.keyboard.press('Enter');
    await expect(dialog).toContainText('2 marks, 2 records, 1 photo');
    // a link would leave the photo behind
    await expect(dialog.getByRole('button').first()).toHaveText('Send as a file');
    const downloads: Download[] = [];
    crewPage.on('download', (d) => downloads.push(d));
    await crew.hand.press(dialog.getByRole('button', { name: 'Send as a file' }));
    await expect.poll(() => downloads.length).toBe(2);
    return await Promise.all(
      downloads.map(async (d) => ({ name: d.suggestedFilename(), buffer: await readFile(await d.path()) })),
    );
  });

  const text = await test.step('which says what was done, by whom, and from which figures', async () => {
    const json = files.find((f) => f.name.endsWith('.json'));
    const said = json?.buffer.toString('utf8') ?? '';
    const answer = JSON.parse(said);
    expect(answer).toMatchObject({
      format: 'footmark-answer',
      site: sent.site.id,
      by: 'Night shift',
      language: 'en',
    });
    const [found] = answer.found;
    expect(found.given.label).toBe('A4');
    expect(found.given.ties[0].distance).toBeCloseTo(ties.pair[0].distance, 9);
    expect(found.where.along).toBeCloseTo(1 * FOOT_M, 9);
    expect(found.where.right).toBeCloseTo(-0.2 * FOOT_M, 9);
    expect(found.depth.to).toBe('invert');
    expect(files.map((f) => f.name)).toContain(`${found.photos[0]}.png`);
    expect(heard).toEqual([]);
    await context.close();
    return said;
  });

  const section = screen.card.getByRole('region', { name: 'What the crew found' });
  const open = async (chosen: Parameters<FileChooser['setFiles']>[0]) => {
    const dialog = page.waitForEvent('filechooser');
    await screen.press('Open a crew’s answer');
    await (await dialog).setFiles(chosen);
  };
  await test.step('the office sees it beside what is computed, and takes it over once', async () => {
    await screen.goTo('Hand-off');
    await open(
      files.map(({ name, buffer }) => ({
        name,
        mimeType: name.endsWith('.png') ? 'image/png' : 'application/json',
        buffer,
      })),
    );
    const answer = section.getByRole('region', { name: 'Answer' });
    await expect(answer).toContainText('Night shift');
    await expect(answer.getByRole('article', { name: 'Found at A4' })).toContainText(
      '1.0 ft from the computed place: 1.0 ft with the flow, 0.2 ft to the left. Inside the search zone.',
    );
    // it was made from just this state of the site
    await expect(answer).not.toContainText('has changed since');
    await keepPicture(page, 'crew-answer');
    await hand.press(answer.getByRole('button', { name: 'Take it over' }));
    await expect(answer).toHaveCount(0);
    await expect(section.getByRole('img', { name: 'Found at A4' })).toBeVisible();
    await open(asFile('again.json', text));
    await expect(answer).toContainText('All of it is taken over already.');
    await hand.press(answer.getByRole('button', { name: 'Close' }));
  });

  await test.step('a second crew disagrees: both stand side by side until one is taken out', async () => {
    const other = JSON.parse(text);
    const [first] = other.found;
    const record = { ...first, id: 'other', by: 'Day shift', photos: [] };
    record.where = { by: 'paint', along: -2 * FOOT_M, right: 0 };
    await open(
      asFile(
        'day.json',
        JSON.stringify({ ...other, id: 'day', by: 'Day shift', ticks: [], found: [record] }),
      ),
    );
    await hand.press(section.getByRole('button', { name: 'Take it over' }));
    // from +1.0 and −0.2 ft to −2 ft: √(3² + 0.2²) = 3.007 ft
    await expect(section).toContainText('A4 was found in two places that are 3.01 ft apart');
    const both = section.getByRole('article', { name: 'Found at A4' });
    await expect(both).toContainText('Night shift');
    await expect(both).toContainText('Day shift');
    await keepPicture(page, 'crew-conflict');
    await hand.press(both.getByRole('button', { name: 'Remove' }).nth(1));
    await expect(section).not.toContainText('two places');
  });

  await test.step('the pipe is drawn as built, through what was found', async () => {
    await hand.press(section.getByRole('button', { name: 'Draw it as built' }));
    await expect(screen.card).toContainText('As built');
    const built = await downloadSite(screen);
    const path = built.site.paths.find((p) => p.state === 'as-built');
    const on = derivedOf(built.site).paths.get(path?.id ?? '');
    // 1 ft with the flow and 0.2 ft to the left of A4, by its azimuth there
    const flow = { x: Math.sin(a4.flow), y: Math.cos(a4.flow) };
    const want = {
      x: a4.at.x + FOOT_M * flow.x - 0.2 * FOOT_M * flow.y,
      y: a4.at.y + FOOT_M * flow.y + 0.2 * FOOT_M * flow.x,
    };
    const near = (on?.points ?? []).map((p) => Math.hypot(p.x - want.x, p.y - want.y));
    expect(Math.min(...near)).toBeLessThan(1e-6);
    const point = near.indexOf(Math.min(...near));
    expect(on?.measured[point]).toBe(true);
    expect(path?.vertices[point]?.level).toMatchObject({ is: 'depth-to-invert' });
    // what was found is known of the marks too
    const ground = built.site.runs.flatMap((r) => r.readings).filter((r) => r.ground !== undefined);
    expect(ground.map((r) => r.ground?.state).sort()).toEqual(['dug', 'found']);
    expect(siteIn(built.text).asFound).toHaveLength(2);
  });

  await test.step('and all of it can be taken back', async () => {
    await expect(await screen.undo()).toMatch(/as built$/);
    expect(await textOfSite(screen)).not.toContain('as-built');
  });
});

async function textOfSite(screen: Parameters<typeof downloadSite>[0]): Promise<string> {
  return (await downloadSite(screen)).text;
}

test('an answer that is none, is broken or is of another site is told as such, and changes nothing', async ({
  page,
  hand,
}) => {
  const screen = await openSample(page, hand);
  await screen.goTo('Hand-off');
  const section = screen.card.getByRole('region', { name: 'What the crew found' });
  const open = async (name: string, content: string) => {
    const dialog = page.waitForEvent('filechooser');
    await screen.press('Open a crew’s answer');
    await (await dialog).setFiles(asFile(name, content));
  };
  const answer = {
    format: 'footmark-answer',
    version: 1,
    id: 'a1',
    site: 'elsewhere',
    madeFrom: { version: 3, hash: '0123456789abcdef' },
    by: '<script>alert(1)</script>',
    language: 'en',
    sentAt: '2026-05-20T12:00:00Z',
    ticks: [],
    found: [],
  };
  for (const [content, said] of [
    ['{', 'is not JSON'],
    ['{}', 'is not a crew’s answer'],
    [JSON.stringify({ ...answer, version: 9 }), 'of version 9'],
    [JSON.stringify({ ...answer, found: 3, extra: 1 }), 'found: '],
  ] as const) {
    await open('answer.json', content);
    await expect(section.getByRole('alert')).toContainText(said);
    await hand.press(section.getByRole('alert').getByRole('button', { name: 'Close' }));
  }
  await open('answer.json', JSON.stringify(answer));
  await expect(section).toContainText('made from another site');
  await expect(section).toContainText('<script>alert(1)</script>');
  await hand.press(section.getByRole('region', { name: 'Answer' }).getByRole('button', { name: 'Close' }));
  expect((await downloadSite(screen)).site.asFound).toEqual([]);
});
