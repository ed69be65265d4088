import cards from '../cards/cards.module.css';
import { useDerived, useSite } from '../session/siteSession';
import { words } from '../words';

/** How good the computation is on this site, by what a receiver found. */
export function AccuracySection() {
  const site = useSite();
  const { accuracy } = useDerived();
  if (accuracy === null) return null;
  const { text, cure } = words.accuracyText(accuracy, site);
  return (
    <div className={cards.section}>
      <h3>Against the receiver</h3>
      <p>{text}</p>
      {cure === '' ? null : <p className={cards.sub}>{cure}</p>}
    </div>
  );
}
