import type { SearchZone } from '@footmark/site';
import { holeSizeText } from '@footmark/words';
import cards from '../cards/cards.module.css';
import { Fold } from '../cards/Fold';
import { useFit } from '../fit/fitSession';
import { useSite } from '../session/siteSession';
import { words } from '../words';
import styles from './marks.module.css';
import { ZoneMakeUp } from './ZoneMakeUp';

/** The hole that is sure to find a mark, and what makes it as large as it is. */
export function ZoneSection({ zone }: { readonly zone: SearchZone }) {
  const site = useSite();
  const { ofSite } = useFit();
  const { units } = site;
  return (
    <div>
      <div className={ofSite === site ? styles.hole : `${styles.hole} ${styles.again}`}>
        <b>{holeSizeText(zone.hole, units)}</b>
        <span>
          Hole, along the pipe × across
          <br />
          holds it 19 times of 20
        </span>
      </div>
      <Fold title="How sure the place is">
        <p className={cards.sub}>
          {words.giveOrTakeText(zone.along, units)} along the pipe, {words.giveOrTakeText(zone.across, units)}{' '}
          across it. The hole has the pipe’s own width on top.
        </p>
        <ZoneMakeUp makeUp={zone.makeUp} />
      </Fold>
    </div>
  );
}
