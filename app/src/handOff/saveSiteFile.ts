import { siteFileName } from '@footmark/exchange';
import { type Site, writeSite } from '@footmark/site';
import { saveFile } from './saveFile';

/** Hands the site file to the browser to keep. */
export function saveSiteFile(site: Site): void {
  saveFile({ name: siteFileName(site, 'json'), data: writeSite(site), type: 'application/json' });
}
