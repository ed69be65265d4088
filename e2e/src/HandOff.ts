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
