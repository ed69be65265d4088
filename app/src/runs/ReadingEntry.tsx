import {
  addReading,
  nextReadingNumber,
  parseClockRange,
  parseLength,
  type Reading,
  type ReadingFacts,
  type Run,
  withoutAbsent,
} from '@footmark/site';
import { counterText } from '@footmark/words';
import { type FormEvent, useRef, useState } from 'react';
import { Input, Label, Text, TextField } from 'react-aria-components';
import cards from '../cards/cards.module.css';
import { Action } from '../controls/Action';
import { Choice } from '../controls/Choice';
import controls from '../controls/controls.module.css';
import { Tick } from '../controls/Tick';
import { edit, useSite } from '../session/siteSession';
import { newId } from '../tools/newId';
import { words } from '../words';
import { counterUnit } from './counterUnit';
import { MoreOfReading } from './MoreOfReading';
import { clockOf } from './readingFacts';
import styles from './runs.module.css';
import { seenOptions } from './seenOptions';

/** What is typed anew for each reading; what was seen stays, for the next one is often the same. */
const EMPTY = { counter: '', clock: '', note: '', passed: true, more: {} as ReadingFacts };

/**
 * Takes readings down one after another: counter, what was seen, where on the wall, Enter. The counter field has the focus
 * again at once, so that a whole run is typed without leaving the keyboard.
 */
export function ReadingEntry({ run }: { readonly run: Run }) {
  const { units } = useSite();
  const unit = counterUnit(units);
  const [typed, setTyped] = useState(EMPTY);
  const [seen, setSeen] = useState<Reading['seen']>('roots');
  const [tried, setTried] = useState(false);
  const counterInput = useRef<HTMLInputElement>(null);
  const set = (part: Partial<typeof EMPTY>) => setTyped((now) => ({ ...now, ...part }));

  const count = typed.counter.trim() === '' ? null : parseLength(typed.counter, unit);
  const wall = typed.clock.trim() === '' ? null : parseClockRange(typed.clock);
  const number = nextReadingNumber(run);
  const label = `${run.letter}${number}`;
  const before = run.readings.at(-1);
  const wentBack =
    count?.ok === true && before !== undefined && count.value < (before.newZero ?? before.counter);

  const add = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    setTried(true);
    const unread = event.currentTarget.querySelector<HTMLElement>('[aria-invalid="true"]');
    if (count?.ok !== true || unread !== null) {
      (count?.ok === true ? unread : counterInput.current)?.focus();
      return;
    }
    const reading = withoutAbsent<Reading>({
      ...typed.more,
      id: newId('m'),
      number,
      counter: count.value,
      seen,
      passed: typed.passed,
      note: typed.note.trim(),
      clock: wall?.ok ? clockOf(wall.value) : undefined,
    });
    if (!edit(`Add reading ${label}`, (s) => addReading(s, { run: run.id, reading }))) return;
    setTyped(EMPTY);
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
    <form className={cards.entry} aria-label={`Reading ${label}`} onSubmit={add}>
      <div className={styles.quick}>
        <TextField
          className={controls.field ?? ''}
          value={typed.counter}
          onChange={(counter) => set({ counter })}
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
          ) : before !== undefined ? (
            <Text slot="description" className={controls.hint ?? ''}>
              {run.letter}
              {before.number}: {counterText(before.counter, units)}
            </Text>
          ) : null}
        </TextField>
        <Choice
          key={number} // letters typed for the reading before are not joined to the next one's
          label="Seen"
          options={seenOptions}
          value={seen}
          onChange={setSeen}
        />
        <TextField
          className={controls.field ?? ''}
          value={typed.clock}
          onChange={(clock) => set({ clock })}
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
        <TextField
          className={controls.field ?? ''}
          value={typed.note}
          onChange={(note) => set({ note })}
          maxLength={5000}
        >
          <Label className={controls.label ?? ''}>Note</Label>
          <Input className={controls.input ?? ''} autoComplete="off" />
        </TextField>
      </div>
      <div className={cards.pair}>
        <Tick isSelected={!typed.passed} onChange={(stuck) => set({ passed: !stuck })}>
          Could not pass
        </Tick>
        <Action look="primary" type="submit">
          Add {label}
        </Action>
      </div>
      <MoreOfReading
        facts={{ ...typed.more, seen }}
        counter={count?.ok ? count.value : undefined}
        onChange={(part) => setTyped((now) => ({ ...now, more: { ...now.more, ...part } }))}
      />
    </form>
  );
}
