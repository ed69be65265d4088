import type { Way } from '@footmark/reroute';
import { Button } from 'react-aria-components';
import cards from '../cards/cards.module.css';
import { useSite } from '../session/siteSession';
import { words } from '../words';
import styles from './reroute.module.css';
import { chooseWay } from './waysSession';

/** The ways by their numbers; the chosen one is drawn strong on the plan. */
export function WayList({ ways, chosen }: { readonly ways: readonly Way[]; readonly chosen: string | null }) {
  const site = useSite();
  return (
    <ol className={cards.rows}>
      {ways.map((way, i) => (
        <li key={way.id}>
          <Button
            className={cards.row ?? ''}
            aria-pressed={way.id === chosen}
            onPress={() => chooseWay(way.id)}
          >
            <span className={styles.number} data-chosen={way.id === chosen || undefined}>
              {i + 1}
            </span>
            <span className={cards.grow}>
              {words.wayName(way.is)}
              <small>{words.wayText(way, site)}</small>
            </span>
          </Button>
        </li>
      ))}
    </ol>
  );
}
