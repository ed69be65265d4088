import { expect, type Locator } from '@playwright/test';
import type { Screen } from './Screen';

/** A reading as one types it. */
export type Typed = {
  readonly counter: string;
  readonly seen: string;
  readonly clock?: string;
  readonly note?: string;
  readonly stuck?: boolean;
};

/**
 * Types readings one after another without a pointer: counter, Tab, Enter and letters for what was seen, Tab, clock, Tab, note, Tab, and
 * Space if the camera could not pass; Enter adds it and the counter has the focus again.
 */
export async function typeReadings(
  screen: Screen,
  letter: string,
  readings: readonly Typed[],
  first = 1,
): Promise<void> {
  const { keyboard } = screen.page;
  for (const [i, { counter, seen, clock = '', note = '', stuck = false }] of readings.entries()) {
    const label = `${letter}${first + i}`;
    const field = screen.field(new RegExp(`^${label}: counter`));
    await expect(field).toBeFocused();
    await keyboard.type(counter);
    await keyboard.press('Tab');
    await keyboard.press('Enter');
    await expect(screen.page.getByRole('listbox')).toBeVisible();
    await keyboard.type(seen);
    await keyboard.press('Enter');
    await expect(screen.chooser('Seen')).toBeFocused();
    await expect(screen.chooser('Seen')).toHaveAccessibleName(`${seen} Seen`);
    await keyboard.press('Tab');
    await keyboard.type(clock);
    await keyboard.press('Tab');
    await keyboard.type(note);
    if (stuck) {
      await keyboard.press('Tab');
      await keyboard.press('Space');
      await keyboard.press('Tab');
    }
    await keyboard.press('Enter');
    await expect(readingRow(screen, label)).toBeVisible();
  }
}

/** The row of a reading: of the table where the card has room for one, else of the list. */
export function readingRow(screen: Screen, label: string): Locator {
  const opener = screen.page.getByRole('button', { name: `${label}, all of it`, exact: true });
  return screen.card
    .getByRole('row')
    .filter({ has: opener })
    .or(screen.row(`${label}(?!\\d)`));
}

/** The rows of all readings that are on the page. */
export function readingRows(screen: Screen): Locator {
  const name = /^Readings of run/;
  const opener = screen.page.getByRole('button', { name: /, all of it$/ });
  return screen.card
    .getByRole('grid', { name })
    .getByRole('row')
    .filter({ has: opener })
    .or(screen.card.getByRole('list', { name }).getByRole('listitem'));
}

/** Opens all that is said of a reading. */
export async function openReading(screen: Screen, label: string): Promise<void> {
  const row = readingRow(screen, label);
  const opener = row.getByRole('button', { name: `${label}, all of it`, exact: true });
  await screen.hand.press((await opener.count()) > 0 ? opener : row);
  await expect(screen.button(`Delete ${label}`)).toBeVisible();
}

/** A cell of the table of readings, by the heading of its column. */
export async function readingCell(screen: Screen, label: string, column: string): Promise<Locator> {
  const headings = await screen.card.getByRole('grid').getByRole('columnheader').allTextContents();
  const at = headings.findIndex((text) => text.startsWith(column));
  expect(at, `the table has a column ${column} in ${headings.join(', ')}`).toBeGreaterThan(0);
  return readingRow(screen, label)
    .getByRole('gridcell')
    .nth(at - 1);
}

/** What the table or the list shows of a reading, whichever there is room for. */
export async function expectReading(
  screen: Screen,
  label: string,
  { counter, seen, note = '', stuck = false }: Typed,
): Promise<void> {
  const row = readingRow(screen, label);
  await expect(row).toContainText(seen);
  if (note !== '') await expect(row).toContainText(note);
  if ((await screen.card.getByRole('grid').count()) > 0) {
    await expect(await readingCell(screen, label, 'Counter')).toHaveText(String(Number(counter)));
    await expect(await readingCell(screen, label, 'Passed')).toHaveText(stuck ? 'no' : 'yes');
  } else {
    await expect(row).toContainText(`${Number(counter).toFixed(1)} ft`);
    await expect(row).toContainText(stuck ? 'could not pass' : '');
  }
}
