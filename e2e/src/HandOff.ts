import type { Download } from '@playwright/test';
import type { Site } from '../../packages/site/src/index';
import type { Screen } from './Screen';
import { siteIn, textOf } from './siteFile';

/** The site as the file that the app hands out. */
export async function downloadSite(
  screen: Screen,
): Promise<{ readonly site: Site; readonly text: string; readonly name: string }> {
  await screen.goTo('Hand-off');
  const coming = screen.page.waitForEvent('download');
  await screen.press('Download the site file');
  const download = await coming;
  const text = await textOf(download);
  return { site: siteIn(text), text, name: download.suggestedFilename() };
}

/** Opens the files for others, with the Hand-off step in front. */
export async function openFiles(screen: Screen): Promise<void> {
  await screen.goTo('Hand-off');
  const fold = screen.card.getByRole('button', { name: /^Files for others/ });
  if ((await fold.getAttribute('aria-expanded')) === 'false') await screen.hand.press(fold);
}

/** One of the files for others, as it is saved. */
export async function saveAs(screen: Screen, file: string): Promise<Download> {
  await openFiles(screen);
  const coming = screen.page.waitForEvent('download');
  await screen.press(`Save: ${file}`);
  return await coming;
}
