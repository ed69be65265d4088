import { expect } from '@playwright/test';
import { openSample } from '../openSample';
import type { Screen } from '../Screen';
import type { Look } from './look';

const NOON = new Date('2026-03-04T12:00:00-06:00');
/** Longer after it than the device waits before it puts a version by. */
const LATER = new Date('2026-03-04T12:30:00-06:00');

/** Opens the sample site and goes through how it was before: the list of versions, one that is looked at, and what changed since. */
export async function walkVersions(page: Screen['page'], hand: Screen['hand'], look: Look): Promise<void> {
  await page.clock.install({ time: NOON });
  const screen = await openSample(page, hand);
  await screen.saved();
  await page.clock.setSystemTime(LATER);
  await screen.goTo('Yard');
  await hand.press(screen.row('Power pole'));
  await screen.fill('Name', 'Pole 17');
  await screen.saved();
  await hand.press(page.getByRole('button', { name: 'More', exact: true }));
  await hand.press(page.getByRole('menuitem', { name: 'History' }));
  const version = screen.card.getByRole('button', { name: /Mar 4, 2026/ });
  await expect(version).toBeVisible();
  await look('versions');
  await hand.press(version);
  const bar = page.getByRole('status').filter({ hasText: 'As it was on Mar 4, 2026' });
  await expect(bar).toContainText('Since then');
  await look('a version that is looked at');
  await hand.press(bar.getByRole('button', { name: 'Back to now' }));
}
