import type { Way } from '@footmark/reroute';
import { useEffect, useRef } from 'react';
import { Button } from 'react-aria-components';
import cards from '../cards/cards.module.css';
import { useSite } from '../session/siteSession';
import { words } from '../words';
import styles from './reroute.module.css';
import { chooseWay } from './waysSession';

/** The ways by their numbers; the chosen one is drawn strong on the plan. */
export function WayList({ ways, chosen }: { readonly ways: readonly Way[]; readonly chosen: string | null }) {
  const site = useSite();
  const list = useRef<HTMLOListElement>(null);
  // on a phone they come in below what was asked for
  useEffect(() => {
    list.current?.scrollIntoView({ block: 'start' });
  }, []);
  return (
    <ol ref={list} className={cards.rows}>
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
              <MustsOf way={way} />
            </span>
          </Button>
        </li>
      ))}
    </ol>
  );
}

/** How much must be settled before a way is dug, so that ways are not chosen by their length alone. */
function MustsOf({ way }: { readonly way: Way }) {
  const musts = way.facts.findings.filter((f) => f.severity === 'must').length;
  return musts === 0 ? null : <small>{musts} to be settled before the dig</small>;
}
