import { addReadings, type Run } from '@footmark/site';
import { ArrowLeft } from 'lucide-react';
import { useDeferredValue, useMemo, useState } from 'react';
import { Label, Text, TextArea, TextField } from 'react-aria-components';
import cards from '../cards/cards.module.css';
import { Action } from '../controls/Action';
import controls from '../controls/controls.module.css';
import { Segments } from '../controls/Segments';
import { edit, useSite } from '../session/siteSession';
import { notifyOfEdit } from '../session/workbench';
import { newId } from '../tools/newId';
import { words } from '../words';
import { counterUnit } from './counterUnit';
import { PastePreview } from './PastePreview';
import { alreadyThere, pastedReadings, pastedTable, type SaidToMean } from './pastedTable';
import { pasteInto, useRunDrafts } from './runDrafts';
import styles from './runs.module.css';
import { UnknownThings } from './UnknownThings';
import { useCardTop } from './useCardTop';

/** Takes rows of a spreadsheet over: what comes in is shown first, and what does not, with the reason; then all of it is one step. */
export function PasteReadings({ run }: { readonly run: Run }) {
  const { units } = useSite();
  const heading = useCardTop();
  const text = useRunDrafts((d) => d.pasted[run.id] ?? '');
  const [unit, setUnit] = useState(counterUnit(units));
  const [means, setMeans] = useState<SaidToMean>({});
  const settled = useDeferredValue(text);
  const table = useMemo(() => pastedTable(settled, unit), [settled, unit]);
  const coming = useMemo(
    () => pastedReadings(table.lines, means, run, () => newId('m')),
    [table, means, run],
  );
  const readings = coming.map((c) => c.reading);
  const isEmpty = settled.trim() === '';
  const known = alreadyThere(readings, run);

  const add = () => {
    const count = countText(readings.length);
    if (!edit(`Paste ${count}`, (s) => addReadings(s, { run: run.id, readings }))) return;
    pasteInto(run.id, null);
    notifyOfEdit(`${count} added to run ${run.letter}.`);
  };
  return (
    <section
      className={`${cards.card} ${styles.runCard}`}
      aria-label={`Paste readings into run ${run.letter}`}
    >
      <div className={cards.head}>
        <Action look="quiet" onPress={() => pasteInto(run.id, null)}>
          <ArrowLeft size={20} aria-hidden /> Run {run.letter}
        </Action>
      </div>
      <h2 ref={heading} className={cards.title} tabIndex={-1}>
        Paste readings
      </h2>
      <TextField
        className={controls.field ?? ''}
        value={text}
        onChange={(next) => pasteInto(run.id, next)}
        autoFocus={text === ''}
      >
        <Label className={controls.label ?? ''}>Rows of a spreadsheet</Label>
        <TextArea className={`${controls.input} ${styles.pasted}`} rows={5} spellCheck="false" />
        <Text slot="description" className={controls.hint ?? ''}>
          Copy the rows there and paste them here. Headings are understood; without them the order is counter,
          what was seen, o'clock, note.
        </Text>
      </TextField>
      {table.asksUnit ? (
        <Segments
          label="The table does not say in what its counter counts"
          options={[
            { id: 'ft', name: 'Feet' },
            { id: 'm', name: 'Metres' },
          ]}
          value={unit}
          onChange={setUnit}
        />
      ) : null}
      <UnknownThings lines={table.lines} means={means} onSay={setMeans} />
      {isEmpty
        ? null
        : table.whole.map((problem) => (
            <p key={problem.code} className={cards.problem} role="alert">
              {words.tableProblemText(problem)}
            </p>
          ))}
      {table.unread.length === 0 ? null : (
        <p className={cards.sub}>Columns left out: {table.unread.map((c) => `“${c.text}”`).join(', ')}.</p>
      )}
      {known > 0 ? (
        <p className={styles.result} data-doubted>
          {known === 1 ? 'One of them is' : `${known} of them are`} in the run already, with the same counter.
        </p>
      ) : null}
      {table.lines.length === 0 ? null : <PastePreview run={run} lines={table.lines} coming={coming} />}
      <div className={cards.dock}>
        <Action look="primary" isDisabled={readings.length === 0} onPress={add}>
          {readings.length === 0 ? 'Add the readings' : `Add ${countText(readings.length)}`}
        </Action>
        <Action onPress={() => pasteInto(run.id, null)}>Cancel</Action>
      </div>
    </section>
  );
}

function countText(count: number): string {
  return `${count.toLocaleString('en-US')} ${count === 1 ? 'reading' : 'readings'}`;
}
