import { type Run, type RunEnd, runEndIds } from '@footmark/site';
import cards from '../cards/cards.module.css';
import { Choice } from '../controls/Choice';
import { TextLine } from '../controls/TextLine';
import { words } from '../words';
import type { ChangeRun } from './changeRunFacts';

type Props = { readonly run: Run; readonly change: ChangeRun };

/** What is said when the camera comes out again. */
export function RunEnding({ run, change }: Props) {
  const options: { id: RunEnd | ''; name: string }[] = [
    { id: '', name: 'Not said' },
    ...runEndIds.map((id) => ({ id, name: words.runEndName(id) })),
  ];
  return (
    <div className={cards.section}>
      <h3>How it ended</h3>
      <Choice
        label="Why the camera went no further"
        options={options}
        value={run.ended ?? ''}
        onChange={(ended) => change('Say how the run ended', { ended: ended === '' ? undefined : ended })}
      />
      <TextLine
        label="Note on the run"
        value={run.note}
        lines={2}
        maxLength={5000}
        onCommit={(note) => change('Change the note', { note })}
      />
    </div>
  );
}
