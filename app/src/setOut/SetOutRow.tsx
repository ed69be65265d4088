import type { SetOutPoint, Site } from '@footmark/site';
import { lengthText } from '@footmark/words';
import { Button } from 'react-aria-components';
import cards from '../cards/cards.module.css';
import { useSite } from '../session/siteSession';
import { words } from '../words';
import styles from './setOut.module.css';
import { showSetOut } from './showSetOut';

/** A point that sets a pipe out, in a list: what is painted, its fitting, its tapes, how far along it is and how deep. */
export function SetOutRow({ point }: { readonly point: SetOutPoint }) {
  const site = useSite();
  return (
    <Button className={cards.row ?? ''} onPress={() => showSetOut(point)}>
      <span className={styles.paint}>{point.label}</span>
      <span className={cards.grow}>
        {words.setOutName(point)}
        <small>{tapesText(point, site)}</small>
      </span>
      <span className={styles.measures}>
        {point.depth === null ? 'not known' : lengthText(point.depth.depth, site.units)}
        <small>at {lengthText(point.station, site.units)}</small>
      </span>
    </Button>
  );
}

function tapesText({ ties, under }: SetOutPoint, site: Site): string {
  if (under !== null) return `under ${words.targetName({ kind: 'feature', id: under }, site)}`;
  if (ties === null) return 'no tapes reach it';
  return `tapes ${ties.pair.map((tie) => lengthText(tie.distance, site.units)).join(' and ')}`;
}
