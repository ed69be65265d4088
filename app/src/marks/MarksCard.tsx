import { marksCsv, siteFileName } from '@footmark/exchange';
import type { Mark } from '@footmark/site';
import { lengthText } from '@footmark/words';
import { ClipboardCopy, Download } from 'lucide-react';
import { Button } from 'react-aria-components';
import { Action } from '../controls/Action';
import { useDerived, useSite } from '../session/siteSession';
import { notify, useWorkbench } from '../session/workbench';
import { words } from '../words';
import { Caution } from './Caution';
import styles from './cards.module.css';
import { downloadText } from './downloadText';
import { MarkCard } from './MarkCard';
import { showMark } from './showMark';

/** Every reading as a place to paint. */
export function MarksCard() {
  const site = useSite();
  const derived = useDerived();
  const selected = useWorkbench((w) => w.selected);
  const mark =
    selected?.kind === 'reading' ? derived.marks.find((m) => m.reading.id === selected.id) : undefined;
  if (mark !== undefined) return <MarkCard key={mark.reading.id} mark={mark} />;
  const csv = () => marksCsv(site, derived, words);
  const copy = async () => {
    try {
      await navigator.clipboard.writeText(csv());
      notify('The marks are on the clipboard.');
    } catch {
      notify('This browser does not allow copying. Download the file instead.');
    }
  };
  return (
    <section className={styles.card} aria-label="Marks">
      <div className={styles.head}>
        <h2>Marks</h2>
      </div>
      {derived.marks.length === 0 ? (
        <p className={styles.empty}>
          Every reading of a run becomes a mark here: its place, and the tapes to find it by.
        </p>
      ) : (
        <>
          <ul className={styles.rows}>
            {derived.marks.map((m) => (
              <li key={m.reading.id}>
                <MarkRow mark={m} />
              </li>
            ))}
          </ul>
          <div className={styles.actions}>
            <Action onPress={() => downloadText(siteFileName(site, 'csv'), csv(), 'text/csv')}>
              <Download size={20} aria-hidden /> Download marks as CSV
            </Action>
            <Action onPress={() => void copy()}>
              <ClipboardCopy size={20} aria-hidden /> Copy
            </Action>
          </div>
          <Caution />
        </>
      )}
    </section>
  );
}

function MarkRow({ mark }: { readonly mark: Mark }) {
  const { units } = useSite();
  const tapes = mark.place?.ties?.pair.map((tie) => lengthText(tie.distance, units)).join(' and ');
  return (
    <Button className={styles.row ?? ''} onPress={() => showMark(mark)}>
      <span className={styles.paint}>{mark.label}</span>
      <span className={styles.grow}>
        {words.observationName(mark.reading.seen)}
        <small>{tapes ? `tapes ${tapes}` : mark.place ? 'no tapes reach it' : 'no place on the line'}</small>
      </span>
      <span className={styles.number}>{mark.place ? lengthText(mark.place.station, units) : ''}</span>
    </Button>
  );
}
