import { join } from 'node:path';
import { type Page, test } from '@playwright/test';

/** Keeps a picture of the screen in the folder that FOOTMARK_SHOTS names, `phone-mark.png`; without one, does nothing. */
export async function keepPicture(page: Page, name: string): Promise<void> {
  const folder = process.env.FOOTMARK_SHOTS;
  if (folder === undefined) return;
  await page.screenshot({ path: join(folder, `${test.info().project.name}-${name}.png`) });
}
