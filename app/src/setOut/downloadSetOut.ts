import { setOutCsv, siteFileName } from '@footmark/exchange';
import { downloadText } from '../cards/downloadText';
import { currentSite, derivedFrom } from '../session/siteSession';
import { words } from '../words';

/** Hands out the points that set the open site's proposed pipes out, as a table. */
export function downloadSetOut(): void {
  const site = currentSite();
  downloadText(siteFileName(site, 'set-out.csv'), setOutCsv(site, derivedFrom(site), words), 'text/csv');
}
