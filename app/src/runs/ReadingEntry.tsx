import {
  addReading,
  type ClockRange,
  nextReadingNumber,
  type ObservationKind,
  observationKindIds,
  parseClockRange,
  parseLength,
  type Reading,
  type Run,
} from '@footmark/site';
import { useRef, useState } from 'react';
import { Input, Label, Text, TextField } from 'react-aria-components';
import styles from '../cards/cards.module.css';
import { Action } from '../controls/Action';
import { Choice } from '../controls/Choice';
import controls from '../controls/controls.module.css';
import { Tick } from '../controls/Tick';
import { edit, useSite } from '../session/siteSession';
import { newId } from '../tools/newId';
import { words } from '../words';

/**
 * Takes readings down one after another: counter, what was seen, where on the wall, Enter. The counter field has the focus
 * again at once, so that a whole run is typed without leaving the keyboard.
 */
export function ReadingEntry({ run }: { readonly run: Run }) {
  const { units } = useSite();
  const unit = units.length === 'm' ? 'm' : 'ft';
  const [counter, setCounter] = useState('');
  const [seen, setSeen] = useState<ObservationKind>('roots');
  const [clock, setClock] = useState('');
  const [passed, setPassed] = useState(true);
  const [note, setNote] = useState('');
  const [tried, setTried] = useState(false);
  const counterInput = useRef<HTMLInputElement>(null);

  const count = counter.trim() === '' ? null : parseLength(counter, unit);
  const wall = clock.trim() === '' ? null : parseClockRange(clock);
  const number = nextReadingNumber(run);
  const label = `${run.letter}${number}`;
  const before = run.readings.at(-1);
  const wentBack =
    count?.ok === true && before !== undefined && count.value < (before.newZero ?? before.counter);

  const add = () => {
    setTried(true);
    if (count?.ok !== true || wall?.ok === false) {
      counterInput.current?.focus();
      return;
    }
    const reading: Reading = {
      id: newId('m'),
      number,
      counter: count.value,
      seen,
      passed,
      note: note.trim(),
      ...(wall === null ? {} : { clock: clockOf(wall.value) }),
    };
    const added = edit(`Add reading ${label}`, (s) => addReading(s, { run: run.id, reading }));
    if (!added) return;
    setCounter('');
    setClock('');
    setNote('');
    setPassed(true);
    setTried(false);
    counterInput.current?.focus();
  };

  const problem =
    count === null
      ? tried
        ? 'Type what the counter shows.'
        : null
      : count.ok
        ? null
        : words.parseProblemText(count);
  return (
    <form
      className={styles.entry}
      aria-label={`Reading ${label}`}
      onSubmit={(event) => {
        event.preventDefault();
        add();
      }}
    >
      <div className={styles.pair}>
        <TextField
          className={controls.field ?? ''}
          value={counter}
          onChange={setCounter}
          isInvalid={problem !== null}
        >
          <Label className={controls.label ?? ''}>
            {label}: counter, {unit}
          </Label>
          <Input ref={counterInput} className={controls.input ?? ''} inputMode="decimal" autoComplete="off" />
          {problem !== null ? (
            <Text slot="errorMessage" className={controls.error ?? ''}>
              {problem}
            </Text>
          ) : wentBack ? (
            <Text slot="description" className={controls.hint ?? ''}>
              Lower than the reading before.
            </Text>
          ) : null}
        </TextField>
        <Choice
          key={number} // letters typed for the reading before are not joined to the next one's
          label="Seen"
          options={observationKindIds.map((id) => ({ id, name: words.observationName(id) }))}
          value={seen}
          onChange={setSeen}
        />
      </div>
      <div className={styles.pair}>
        <TextField
          className={controls.field ?? ''}
          value={clock}
          onChange={setClock}
          isInvalid={wall?.ok === false}
        >
          <Label className={controls.label ?? ''}>On the wall, o'clock</Label>
          <Input className={controls.input ?? ''} placeholder="12, or 9-3" autoComplete="off" />
          {wall?.ok === false ? (
            <Text slot="errorMessage" className={controls.error ?? ''}>
              {words.parseProblemText(wall)}
            </Text>
          ) : null}
        </TextField>
        <TextField className={controls.field ?? ''} value={note} onChange={setNote} maxLength={5000}>
          <Label className={controls.label ?? ''}>Note</Label>
          <Input className={controls.input ?? ''} autoComplete="off" />
        </TextField>
      </div>
      <div className={styles.pair}>
        <Tick isSelected={!passed} onChange={(stuck) => setPassed(!stuck)}>
          Could not pass
        </Tick>
        <Action look="primary" type="submit">
          Add {label}
        </Action>
      </div>
    </form>
  );
}

/** A reading's clock as the site keeps it: one hour, or a range. */
export function clockOf(range: ClockRange): NonNullable<Reading['clock']> {
  return range.from === range.to ? { from: range.from } : { from: range.from, to: range.to };
}
