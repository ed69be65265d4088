import { setOutCsv, siteFileName } from '@footmark/exchange';
import { saveFile } from '../handOff/saveFile';
import { currentSite, derivedFrom } from '../session/siteSession';
import { words } from '../words';

/** Hands out the points that set the open site's proposed pipes out, as a table. */
export function downloadSetOut(): void {
  const site = currentSite();
  const data = setOutCsv(site, derivedFrom(site), words);
  saveFile({ name: siteFileName(site, 'set-out.csv'), data, type: 'text/csv' });
}
