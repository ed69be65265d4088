import { marksCsv, siteFileName } from '@footmark/exchange';
import { fitOfSite } from '../fit/fitOfSite';
import { saveFile } from '../handOff/saveFile';
import { currentSite, derivedFrom } from '../session/siteSession';
import { words } from '../words';

/** The open site's marks as a table, each with its hole. */
export function marksTable(): string {
  const site = currentSite();
  return marksCsv(site, derivedFrom(site), fitOfSite(site), words);
}

export function downloadMarks(): void {
  saveFile({ name: siteFileName(currentSite(), 'csv'), data: marksTable(), type: 'text/csv' });
}
