import { type PriceItem, type PriceList, priceItems } from '@footmark/reroute';
import { FOOT_M, type Units } from '@footmark/site';
import { create } from 'zustand';
import { recallJson, remember } from '../session/onDevice';

const KEY = 'footmark-prices';

/** The price list of this device, by SI units. Not part of a site: what a firm charges is nobody else's. */
export const usePrices = create<PriceList>()(() => read());

/** Sets a price as it is told in a site's units; undefined takes it away. */
export function setPrice(item: PriceItem, told: number | undefined, units: Units): void {
  usePrices.setState({ [item]: told === undefined ? undefined : told / unitOf(item, units) });
  // without storage the list lasts as long as the page
  remember(KEY, JSON.stringify(usePrices.getState()));
}

/** A price as it is told in a site's units. */
export function priceIn(prices: PriceList, item: PriceItem, units: Units): number | undefined {
  const price = prices[item];
  return price === undefined ? undefined : Number((price * unitOf(item, units)).toFixed(4));
}

/** How many SI units one of what is charged by holds. */
function unitOf(item: PriceItem, { length }: Units): number {
  const unit = length === 'm' ? 1 : FOOT_M;
  switch (item) {
    case 'pipe':
    case 'bored':
      return unit;
    case 'dug':
      return length === 'm' ? 1 : (3 * unit) ** 3;
    case 'paved':
    case 'lawn':
      return unit ** 2;
    case 'bend':
    case 'cleanout':
      return 1;
  }
}

/** What is no number of a known item was not written by us. */
function read(): PriceList {
  const stored = recallJson(KEY);
  if (typeof stored !== 'object' || stored === null) return {};
  const known = Object.entries(stored).filter(
    ([item, price]) =>
      priceItems.some((p) => p === item) && typeof price === 'number' && Number.isFinite(price) && price >= 0,
  );
  return Object.fromEntries(known);
}
