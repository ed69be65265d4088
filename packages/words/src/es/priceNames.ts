import type { Price, PriceItem } from '@footmark/reroute';
import type { Units } from '@footmark/site';
import { countText } from '../countText';
import { inSentence } from '../named';

/** What something is charged by, in the units that crews price in. */
export function priceItemName(item: PriceItem, { length }: Units): string {
  const metric = length === 'm';
  const one = metric ? 'Un metro' : 'Un pie';
  const square = metric ? 'Un metro cuadrado' : 'Un pie cuadrado';
  const names: Record<PriceItem, string> = {
    pipe: `${one} de tubería nueva, tendida`,
    bored: `${one} de tubería perforada, reventada o encamisada`,
    bend: 'Un codo',
    cleanout: 'Un registro',
    dug: metric ? 'Un metro cúbico excavado y repuesto' : 'Una yarda cúbica excavada y repuesta',
    paved: `${square} de pavimento`,
    lawn: `${square} de césped`,
  };
  return names[item];
}

/** What a way costs, in whole units of a currency, and what the price is without. */
export function priceText(price: Price | null, units: Units): string {
  if (price === null) return 'no se conoce';
  const sum = countText(Math.round(price.total));
  if (price.without.length === 0) return sum;
  return `${sum} sin ${price.without.map((item) => inSentence(priceItemName(item, units))).join('; ')}`;
}
