import { ClipboardCopy, Download } from 'lucide-react';
import { Caution } from '../cards/Caution';
import cards from '../cards/cards.module.css';
import { Action } from '../controls/Action';
import { FitActions } from '../fit/FitActions';
import { FitStatus } from '../fit/FitStatus';
import { useDerived } from '../session/siteSession';
import { notify, useWorkbench } from '../session/workbench';
import { SetOutCard } from '../setOut/SetOutCard';
import { SetOutSection } from '../setOut/SetOutSection';
import { useSetOutPoint } from '../setOut/useSetOutPoint';
import { AccuracySection } from './AccuracySection';
import { MarkCard } from './MarkCard';
import { MarkList } from './MarkList';
import { downloadMarks, marksTable } from './marksTable';

/** Every reading as a place to paint, and how the evidence for them stands. */
export function MarksCard() {
  const derived = useDerived();
  const selected = useWorkbench((w) => w.selected);
  const mark =
    selected?.kind === 'reading' ? derived.marks.find((m) => m.reading.id === selected.id) : undefined;
  const setOut = useSetOutPoint();
  if (mark !== undefined) return <MarkCard key={mark.reading.id} mark={mark} />;
  if (setOut !== null) return <SetOutCard {...setOut} />;
  const copy = async () => {
    const table = marksTable();
    try {
      await navigator.clipboard.writeText(table);
      notify('The marks are on the clipboard.');
    } catch {
      notify('This browser does not allow copying. Download the file instead.');
    }
  };
  return (
    <section className={cards.card} aria-label="Marks">
      <div className={cards.head}>
        <h2>Marks</h2>
      </div>
      <SetOutSection />
      {derived.marks.length === 0 ? (
        <p className={cards.empty}>
          Every reading of a run becomes a mark here: its place, and the tapes to find it by.
        </p>
      ) : (
        <>
          <FitStatus />
          <FitActions withDetails />
          <MarkList />
          <AccuracySection />
          <div className={cards.actions}>
            <Action onPress={downloadMarks}>
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
