import type { PriceItem } from '@footmark/reroute';
import type { Units } from '@footmark/site';

/** What something is charged by, in the units that crews price in. */
export function priceItemName(item: PriceItem, { length }: Units): string {
  const metric = length === 'm';
  const names: Record<PriceItem, string> = {
    pipe: `A ${metric ? 'meter' : 'foot'} of new pipe, laid`,
    bored: `A ${metric ? 'meter' : 'foot'} bored, burst or lined`,
    bend: 'A bend',
    cleanout: 'A cleanout',
    dug: `A cubic ${metric ? 'meter' : 'yard'} dug out and put back`,
    paved: `A square ${metric ? 'meter' : 'foot'} of pavement`,
    lawn: `A square ${metric ? 'meter' : 'foot'} of lawn`,
  };
  return names[item];
}
