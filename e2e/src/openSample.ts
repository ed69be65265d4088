import type { Page } from '@playwright/test';
import { Home } from './Home';
import type { Hand } from './hand';
import { Screen } from './Screen';

/** Opens the sample site from the first screen. */
export async function openSample(page: Page, hand: Hand): Promise<Screen> {
  const home = new Home(page, hand);
  await home.open();
  await home.press('Open the sample site');
  return new Screen(page, hand);
}
