import { expect } from '@playwright/test';
import { openFiles } from '../HandOff';
import type { Screen } from '../Screen';
import type { Look } from './look';

/** An answer from a crew that had another site. */
const ANSWER = {
  format: 'footmark-answer',
  version: 1,
  id: 'a1',
  site: 'elsewhere',
  madeFrom: { version: 3, hash: '0123456789abcdef' },
  by: 'Night shift',
  language: 'en',
  sentAt: '2026-05-20T12:00:00Z',
  ticks: [],
  found: [],
};

/** Goes through all that comes up from the Hand-off step: the sheet as it prints, the link and its code, files that go out and come in, and a crew's answer. */
export async function walkHandOff(screen: Screen, look: Look): Promise<void> {
  await screen.goTo('Hand-off');
  await sheets(screen, look);
  await link(screen, look);
  await openFiles(screen);
  await look('files for others');
  await bringIn(screen, look);
  await answers(screen, look);
}

async function sheets(screen: Screen, look: Look): Promise<void> {
  const { page, hand } = screen;
  await hand.press(screen.card.getByRole('button', { name: /^Paper, scale, language/ }));
  await look('what a sheet is to be');
  for (const kind of ['Mark-out', 'Findings for the owner']) {
    await screen.choose('What it is for', kind);
    await screen.press('Look at the sheet');
    const dialog = page.getByRole('dialog');
    await expect(dialog.getByRole('img', { name: /^Sheet 1 of/ })).toBeVisible({ timeout: 20_000 });
    await look(`sheet: ${kind}`);
    await hand.press(dialog.getByRole('button', { name: 'Close' }));
  }
}

async function link(screen: Screen, look: Look): Promise<void> {
  const { page, hand } = screen;
  await hand.press(screen.card.getByRole('button', { name: /^What goes along/ }));
  await screen.press('Show as a QR code');
  const dialog = page.getByRole('dialog');
  await expect(dialog.getByRole('img', { name: 'Code 1 of 1' })).toBeVisible();
  await look('code');
  await hand.press(dialog.getByRole('button', { name: 'Done' }));
}

/** Goes through the coordinates that files for others are in: of a site on the earth, with a system that is typed and is none. */
export async function walkGrids(screen: Screen, look: Look): Promise<void> {
  await openFiles(screen);
  await screen.choose('Coordinates in files', 'Another system, typed');
  await screen.fill('Its definition (PROJ string or WKT)', '+proj=nowhere');
  await screen.press('Use this system');
  await expect(screen.card.getByRole('alert')).toBeVisible();
  await look('a system that is none');
}

async function bringIn(screen: Screen, look: Look): Promise<void> {
  const { hand } = screen;
  await hand.press(screen.card.getByRole('button', { name: /^Bring a file in/ }));
  await look('bring a file in');
  await give(screen, 'Choose a file', 'notes.txt', 'nothing of this is a list of points');
  const form = (name: string) => screen.card.getByRole('region', { name: `Bring in ${name}` });
  await expect(form('notes.txt').getByRole('alert')).toBeVisible();
  await look('a file of nothing');
  await hand.press(form('notes.txt').getByRole('button', { name: 'Leave it' }));

  await give(screen, 'Choose a file', 'points.csv', '1,40.00,12.50,,IRON PIN\n2,60.00,12.50,,HUB\n');
  await look('what its numbers are');
  for (const [question, entry] of [
    [/What are its coordinates/, 'This site’s own, x and y'],
    [/What are they counted in/, 'international feet (0.3048 m)'],
    [/Which column is which/, 'P, N, E, Z, D'],
  ] as const)
    await hand.choose(form('points.csv').getByRole('button', { name: question }), entry);
  await expect(form('points.csv').getByRole('img', { name: 'Where it would lie' })).toBeVisible();
  await look('where it would lie');
  await hand.press(form('points.csv').getByRole('button', { name: 'Leave it' }));
}

async function answers(screen: Screen, look: Look): Promise<void> {
  const { hand } = screen;
  const section = screen.card.getByRole('region', { name: 'What the crew found' });
  await give(screen, 'Open a crew’s answer', 'answer.json', '{');
  await expect(section.getByRole('alert')).toBeVisible();
  await look('an answer that is none');
  await give(screen, 'Open a crew’s answer', 'answer.json', JSON.stringify(ANSWER));
  const answer = section.getByRole('region', { name: 'Answer' });
  await expect(answer).toBeVisible();
  await look('a crew’s answer');
  await hand.press(answer.getByRole('button', { name: 'Close' }));
}

async function give(screen: Screen, button: string, name: string, text: string): Promise<void> {
  const dialog = screen.page.waitForEvent('filechooser');
  await screen.press(button);
  await (await dialog).setFiles({ name, mimeType: 'application/octet-stream', buffer: Buffer.from(text) });
}
