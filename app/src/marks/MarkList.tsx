import { type Mark, markState, type Units } from '@footmark/site';
import { holeSizeText, lengthText } from '@footmark/words';
import cards from '../cards/cards.module.css';
import { useMoreInSight } from '../cards/useMoreInSight';
import { useDigging } from '../dig/digging';
import { useFit } from '../fit/fitSession';
import { useDerived, useSite } from '../session/siteSession';
import { words } from '../words';
import { MarkRow } from './MarkRow';
import styles from './marks.module.css';

/** The marks of the site in the order of their runs. */
export function MarkList() {
  const site = useSite();
  const { marks, locates } = useDerived();
  const { fit, ofSite } = useFit();
  const { land } = useDigging();
  const landAt = new Map(land.marks.map((m) => [m.reading, m]));
  const landOf = (reading: string) => {
    const at = landAt.get(reading);
    return at === undefined ? '' : words.whoseAtText(at, 'brief', site);
  };
  const { shown, end } = useMoreInSight<HTMLLIElement>(marks.length);
  const holeOf = ({ place, reading }: Mark) => {
    const zone = place === null ? undefined : fit?.marks.get(reading.id)?.zone;
    return zone ? holeSizeText(zone.hole, site.units) : '';
  };
  return (
    <div>
      <p className={styles.columns} aria-hidden>
        <span>Mark</span>
        <span>Hole that finds it, along × across</span>
      </p>
      <ul className={`${cards.rows} ${styles.list}`} data-old={ofSite !== site}>
        {marks.slice(0, shown).map((mark) => (
          <li key={mark.reading.id}>
            <MarkRow
              reading={mark.reading.id}
              label={mark.label}
              seen={mark.reading.seen}
              place={placeText(mark, site.units)}
              land={landOf(mark.reading.id)}
              hole={holeOf(mark)}
              state={mark.place === null ? null : markState(mark, locates)}
            />
          </li>
        ))}
        {shown < marks.length ? <li ref={end} aria-hidden /> : null}
      </ul>
    </div>
  );
}

function placeText({ place }: Mark, units: Units): string {
  if (place === null) return 'no place on the line';
  const tapes = (place.paint ?? place).ties?.pair.map((tie) => lengthText(tie.distance, units));
  return tapes === undefined ? 'no tapes reach it' : `tapes ${tapes.join(' and ')}`;
}
