import { changeRun, type Run } from '@footmark/site';
import { ArrowLeft, Trash2 } from 'lucide-react';
import cards from '../cards/cards.module.css';
import { FindingRow } from '../cards/FindingRow';
import { Fold } from '../cards/Fold';
import { Action } from '../controls/Action';
import { removeThings } from '../session/chosenThings';
import { edit, useDerived, useSite } from '../session/siteSession';
import { select } from '../session/workbench';
import { words } from '../words';
import type { ChangeRun } from './changeRunFacts';
import { entryName } from './entryOf';
import { PasteReadings } from './PasteReadings';
import { ReadingEntry } from './ReadingEntry';
import { ReadingList } from './ReadingList';
import { RunDetails } from './RunDetails';
import { RunEnding } from './RunEnding';
import { RunSetup } from './RunSetup';
import { pasteInto, useRunDrafts } from './runDrafts';
import styles from './runs.module.css';
import { useCardTop } from './useCardTop';
import { useTablePaste } from './useTablePaste';

/** One push of the camera, or the leaf that takes readings over for it. */
export function RunCard({ run }: { readonly run: Run }) {
  const pasting = useRunDrafts((d) => d.pasted[run.id] !== undefined);
  useTablePaste((text) => pasteInto(run.id, text));
  return pasting ? <PasteReadings run={run} /> : <RunSheet run={run} />;
}

/** The readings first, for they are typed in the yard; how it went in stands above them, folded. */
function RunSheet({ run }: { readonly run: Run }) {
  const site = useSite();
  const derived = useDerived();
  const heading = useCardTop();
  const about = derived.findings.filter((f) => f.at.kind === 'run' && f.at.id === run.id);
  const change: ChangeRun = (what, facts) => edit(what, (s) => changeRun(s, { id: run.id, facts }));
  const visit = site.visits.find((v) => v.id === run.visit);
  const entry = entryName(site, run);
  return (
    <section className={`${cards.card} ${styles.runCard}`} aria-label={`Run ${run.letter}`}>
      <div className={cards.head}>
        <Action look="quiet" onPress={() => select(null)}>
          <ArrowLeft size={20} aria-hidden /> Runs
        </Action>
        <Action look="quiet" onPress={() => removeThings([run.id])}>
          <Trash2 size={20} aria-hidden /> Delete
        </Action>
      </div>
      <div>
        <h2 ref={heading} className={cards.title} tabIndex={-1}>
          Run {run.letter}
          {entry === null ? '' : `, from ${entry}`}
        </h2>
        <p className={cards.sub}>{visit === undefined ? 'No visit yet' : words.visitName(visit)}</p>
      </div>
      {about.map((finding) => (
        <FindingRow key={finding.code} finding={finding} />
      ))}
      <Fold title="How the camera went in" isOpen={run.readings.length === 0}>
        <RunSetup run={run} change={change} />
        <Fold title="Counter, camera head and visit">
          <RunDetails run={run} change={change} />
        </Fold>
      </Fold>
      <ReadingEntry run={run} />
      <ReadingList run={run} />
      <RunEnding run={run} change={change} />
    </section>
  );
}
