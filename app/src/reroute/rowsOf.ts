import { type PriceList, priceItems, priceOf, type Way } from '@footmark/reroute';
import type { Site } from '@footmark/site';
import type { WayRow } from '@footmark/words';
import { words } from '../words';

/** What a way takes, row by row, with its price where a price list is given. */
export function rowsOf(way: Way, site: Site, prices: PriceList): readonly WayRow[] {
  const rows = words.wayRows(way, site);
  if (priceItems.every((item) => prices[item] === undefined)) return rows;
  return [{ name: 'Price', text: words.priceText(priceOf(way, prices), site.units) }, ...rows];
}
