import { type Finding, type Run, sortReadings } from '@footmark/site';
import { ArrowDownNarrowWide, ClipboardPaste } from 'lucide-react';
import { useMemo, useRef } from 'react';
import cards from '../cards/cards.module.css';
import { Action } from '../controls/Action';
import { edit, useDerived } from '../session/siteSession';
import { ReadingGrid } from './ReadingGrid';
import { ReadingRows } from './ReadingRows';
import { pasteInto } from './runDrafts';
import styles from './runs.module.css';
import { useWidth } from './useWidth';

/** From here on (px) a card has room for a table, and for all of its columns. */
const TABLE_FROM_PX = 540;
const ROOMY_FROM_PX = 760;

/** The readings of a run: a table to type in where there is room for one, else rows that open. */
export function ReadingList({ run }: { readonly run: Run }) {
  const box = useRef<HTMLDivElement>(null);
  const width = useWidth(box);
  const findings = useReadingFindings(run);
  const isReset = run.readings.some((r) => r.newZero !== undefined);
  const isSorted = run.readings.every((r, i) => r.counter >= (run.readings[i - 1]?.counter ?? 0));
  return (
    <div ref={box} className={cards.section}>
      <div className={styles.listHead}>
        <h3>{run.readings.length === 0 ? 'Readings' : `Readings, ${run.readings.length}`}</h3>
        {isSorted || isReset ? null : (
          <Action
            look="quiet"
            onPress={() => edit('Sort the readings', (s) => sortReadings(s, { run: run.id }))}
          >
            <ArrowDownNarrowWide size={20} aria-hidden /> Sort by counter
          </Action>
        )}
        <Action look="quiet" onPress={() => pasteInto(run.id, '')}>
          <ClipboardPaste size={20} aria-hidden /> Paste readings
        </Action>
      </div>
      {run.readings.length === 0 || width === 0 ? null : width < TABLE_FROM_PX ? (
        <ReadingRows run={run} findings={findings} />
      ) : (
        <ReadingGrid run={run} findings={findings} isRoomy={width >= ROOMY_FROM_PX} />
      )}
    </div>
  );
}

/** What is the matter with the readings of a run, notes aside, by reading. What an edit leaves as it was is the same list as before. */
function useReadingFindings(run: Run): ReadonlyMap<string, readonly Finding[]> {
  const { findings } = useDerived();
  const before = useRef<ReadonlyMap<string, readonly Finding[]>>(new Map());
  return useMemo(() => {
    const found = new Map<string, readonly Finding[]>();
    for (const finding of findings) {
      if (finding.at.kind !== 'reading' || finding.at.run !== run.id || finding.severity === 'note') continue;
      const { id } = finding.at;
      found.set(id, [...(found.get(id) ?? []), finding]);
    }
    for (const [id, list] of found) {
      const last = before.current.get(id);
      if (last !== undefined && JSON.stringify(last) === JSON.stringify(list)) found.set(id, last);
    }
    before.current = found;
    return found;
  }, [findings, run.id]);
}
