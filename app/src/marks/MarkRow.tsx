import { type Mark, markState, type SearchZone } from '@footmark/site';
import { holeSizeText, lengthText } from '@footmark/words';
import { Button } from 'react-aria-components';
import cards from '../cards/cards.module.css';
import { useDerived, useSite } from '../session/siteSession';
import { words } from '../words';
import styles from './marks.module.css';
import { StateBadge } from './StateBadge';
import { showMark } from './showMark';

type Props = {
  readonly mark: Mark;
  /** Null while it is not known. */
  readonly zone: SearchZone | null;
  /** The zone is of an earlier state of the site. */
  readonly isOld: boolean;
};

/** A mark in a list: what was seen, how far it has come, its tapes, and the hole that is sure to find it. */
export function MarkRow({ mark, zone, isOld }: Props) {
  const { units } = useSite();
  const { locates } = useDerived();
  const tapes = (mark.place?.paint ?? mark.place)?.ties?.pair
    .map((tie) => lengthText(tie.distance, units))
    .join(' and ');
  return (
    <Button className={cards.row ?? ''} onPress={() => showMark(mark)}>
      <span className={cards.paint}>{mark.label}</span>
      <span className={cards.grow}>
        {words.observationName(mark.reading.seen)}
        <small>
          {mark.place === null ? 'no place on the line' : tapes ? `tapes ${tapes}` : 'no tapes reach it'}
        </small>
      </span>
      {mark.place === null ? null : (
        <span className={styles.rowSize}>
          <span className={isOld ? styles.again : ''}>
            {zone === null ? '' : holeSizeText(zone.hole, units)}
          </span>
          <small>
            <StateBadge state={markState(mark, locates)} />
          </small>
        </span>
      )}
    </Button>
  );
}
