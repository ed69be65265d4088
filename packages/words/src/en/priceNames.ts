import type { Price, PriceItem } from '@footmark/reroute';
import type { Units } from '@footmark/site';
import { countText } from '../countText';
import { inSentence } from '../named';

/** What something is charged by, in the units that crews price in. */
export function priceItemName(item: PriceItem, { length }: Units): string {
  const metric = length === 'm';
  const names: Record<PriceItem, string> = {
    pipe: `A ${metric ? 'metre' : 'foot'} of new pipe, laid`,
    bored: `A ${metric ? 'metre' : 'foot'} bored, burst or lined`,
    bend: 'A bend',
    cleanout: 'A cleanout',
    dug: `A cubic ${metric ? 'metre' : 'yard'} dug out and put back`,
    paved: `A square ${metric ? 'metre' : 'foot'} of pavement`,
    lawn: `A square ${metric ? 'metre' : 'foot'} of lawn`,
  };
  return names[item];
}

/** What a way costs, in whole units of a currency, and what the price is without. */
export function priceText(price: Price | null, units: Units): string {
  if (price === null) return 'not known';
  const sum = countText(Math.round(price.total));
  if (price.without.length === 0) return sum;
  return `${sum} without ${price.without.map((item) => inSentence(priceItemName(item, units))).join('; ')}`;
}
