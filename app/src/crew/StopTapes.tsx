import type { Tie, Ties } from '@footmark/site';
import { lengthText } from '@footmark/words';
import { useSite } from '../session/siteSession';
import { words } from '../words';
import styles from './stop.module.css';

/** Two tapes with where to hook them, the third to check by, and on which side the paint is. */
export function StopTapes({ ties }: { readonly ties: Ties | null }) {
  const site = useSite();
  const { label } = words.crew;
  if (ties === null) return <p className={styles.none}>{label('no-tapes')}</p>;
  return (
    <div>
      <div className={styles.tapes}>
        <Tape tie={ties.pair[0]} use={label('first-tape')} />
        <Tape tie={ties.pair[1]} use={label('second-tape')} />
        {ties.check === null ? null : <Tape tie={ties.check} use={label('to-check')} />}
      </div>
      <p className={styles.side}>{words.sideText(ties, site)}</p>
    </div>
  );
}

function Tape({ tie, use }: { readonly tie: Tie; readonly use: string }) {
  const site = useSite();
  return (
    <div className={styles.tape}>
      <small>{use}</small>
      <b>{lengthText(tie.distance, site.units)}</b>
      <span>{words.crew.tapeFromText(tie.from, site)}</span>
    </div>
  );
}
