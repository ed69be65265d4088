import { type Price, type PriceList, priceItems, priceOf, type Way } from '@footmark/reroute';
import type { Site } from '@footmark/site';
import type { WayRow } from '@footmark/words';
import { words } from '../words';

/** What a way takes, row by row, with its price where a price list is given. */
export function rowsOf(way: Way, site: Site, prices: PriceList): readonly WayRow[] {
  const rows = words.wayRows(way, site);
  if (priceItems.every((item) => prices[item] === undefined)) return rows;
  const price = priceOf(way, prices);
  return [{ name: 'Price', text: price === null ? 'not known' : priceText(price, site) }, ...rows];
}

function priceText({ total, without }: Price, { units }: Site): string {
  const sum = Math.round(total).toLocaleString('en-US');
  if (without.length === 0) return sum;
  const names = without.map((item) => inText(words.priceItemName(item, units)));
  return `${sum} without ${names.join('; ')}`;
}

function inText(name: string): string {
  return name.slice(0, 1).toLowerCase() + name.slice(1);
}
