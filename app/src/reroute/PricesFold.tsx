import { priceItems } from '@footmark/reroute';
import { parseNumber } from '@footmark/site';
import cards from '../cards/cards.module.css';
import { Fold } from '../cards/Fold';
import { MeasureField } from '../controls/MeasureField';
import { useSite } from '../session/siteSession';
import { words } from '../words';
import { priceIn, setPrice, usePrices } from './prices';

const MOST = 1e7;

/** The price list of this device; it goes along with no site. */
export function PricesFold() {
  const { units } = useSite();
  const prices = usePrices();
  const given = priceItems.filter((item) => prices[item] !== undefined).length;
  return (
    <Fold title="Prices" result={given === 0 ? 'none given' : `${given} given`}>
      <div className={cards.section}>
        {priceItems.map((item) => (
          <MeasureField
            key={item}
            label={words.priceItemName(item, units)}
            value={priceIn(prices, item, units)}
            parse={(text) => parseNumber(text, { most: MOST })}
            print={String}
            onChange={(price) => setPrice(item, price, units)}
          />
        ))}
        <p className={cards.empty}>In whatever currency you think in. They stay on this device.</p>
      </div>
    </Fold>
  );
}
