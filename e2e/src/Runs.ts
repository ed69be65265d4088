import { expect } from '@playwright/test';
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
    await expect(screen.row(`${label}`).first()).toBeVisible();
  }
}
