import {
  changeReading,
  formatClock,
  lengthInputText,
  type ObservationKind,
  observationKindIds,
  parseClockRange,
  parseLength,
  type Reading,
  type Run,
  removeReading,
} from '@footmark/site';
import { counterText, lengthText } from '@footmark/words';
import { useState } from 'react';
import { Button, Input, Label, Text, TextField } from 'react-aria-components';
import styles from '../cards/cards.module.css';
import { FindingRow } from '../cards/FindingRow';
import { Action } from '../controls/Action';
import { Choice } from '../controls/Choice';
import controls from '../controls/controls.module.css';
import { MeasureField } from '../controls/MeasureField';
import { TextLine } from '../controls/TextLine';
import { Tick } from '../controls/Tick';
import { edit, useDerived, useSite } from '../session/siteSession';
import { show } from '../session/workbench';
import { words } from '../words';
import { clockOf } from './ReadingEntry';

/** The readings of a run, each with the station that it comes to; one at a time is open for change. */
export function ReadingTable({ run }: { readonly run: Run }) {
  const [open, setOpen] = useState<string | null>(null);
  if (run.readings.length === 0) return null;
  return (
    <ul className={styles.rows} aria-label={`Readings of run ${run.letter}`}>
      {run.readings.map((reading) => (
        <li key={reading.id}>
          <ReadingRow
            run={run}
            reading={reading}
            isOpen={open === reading.id}
            onToggle={() => setOpen(open === reading.id ? null : reading.id)}
          />
        </li>
      ))}
    </ul>
  );
}

type RowProps = {
  readonly run: Run;
  readonly reading: Reading;
  readonly isOpen: boolean;
  readonly onToggle: () => void;
};

function ReadingRow({ run, reading, isOpen, onToggle }: RowProps) {
  const site = useSite();
  const derived = useDerived();
  const mark = derived.marks.find((m) => m.reading.id === reading.id);
  const about = derived.findings.filter(
    (f) => f.at.kind === 'reading' && f.at.id === reading.id && f.severity !== 'note',
  );
  const station = mark?.place
    ? `station ${lengthText(mark.place.station, site.units)}`
    : 'no place on the line';
  return (
    <>
      <Button className={styles.row ?? ''} onPress={onToggle} aria-expanded={isOpen}>
        <span className={styles.paint}>
          {run.letter}
          {reading.number}
        </span>
        <span className={styles.grow}>
          {words.observationName(reading.seen)}
          {reading.clock ? `, ${formatClock(reading.clock)}` : ''}
          <small>
            {station}
            {reading.passed ? '' : ', could not pass'}
            {reading.note ? `, ${reading.note}` : ''}
          </small>
        </span>
        <span className={styles.number}>{counterText(reading.counter, site.units)}</span>
      </Button>
      {about.map((finding) => (
        <FindingRow key={finding.code} finding={finding} />
      ))}
      {isOpen ? <ReadingForm run={run} reading={reading} hasPlace={mark?.place != null} /> : null}
    </>
  );
}

function ReadingForm({
  run,
  reading,
  hasPlace,
}: {
  readonly run: Run;
  readonly reading: Reading;
  readonly hasPlace: boolean;
}) {
  const { units } = useSite();
  const unit = units.length === 'm' ? 'm' : 'ft';
  const label = `${run.letter}${reading.number}`;
  const change = (part: Partial<Reading>) =>
    edit(`Change reading ${label}`, (s) =>
      changeReading(s, { run: run.id, id: reading.id, facts: withoutAbsent({ ...reading, ...part }) }),
    );
  return (
    <div className={styles.vertexForm}>
      <div className={styles.pair}>
        <MeasureField
          label={`Counter, ${unit}`}
          value={reading.counter}
          required
          parse={(text) => parseLength(text, unit)}
          print={(metres) => lengthInputText(metres, unit)}
          onChange={(counter) => counter !== undefined && change({ counter })}
        />
        <Choice
          label="Seen"
          options={observationKindIds.map((id) => ({ id, name: words.observationName(id) }))}
          value={reading.seen}
          onChange={(seen: ObservationKind) => change({ seen })}
        />
      </div>
      <div className={styles.pair}>
        <ClockField
          key={reading.clock === undefined ? '' : clockText(reading.clock)} // its text begins anew when the value comes from elsewhere
          value={reading.clock}
          onCommit={(clock) => change({ clock } as Partial<Reading>)} // undefined clears: see withoutAbsent
        />
        <MeasureField
          label="Counter set anew here, to"
          value={reading.newZero}
          parse={(text) => parseLength(text, unit)}
          print={(metres) => lengthInputText(metres, unit)}
          onChange={(newZero) => change({ newZero } as Partial<Reading>)} // undefined clears: see withoutAbsent
        />
      </div>
      <TextLine label="Note" value={reading.note} maxLength={5000} onCommit={(note) => change({ note })} />
      <Tick isSelected={!reading.passed} onChange={(stuck) => change({ passed: !stuck })}>
        Could not pass
      </Tick>
      <div className={styles.actions}>
        {hasPlace ? (
          <Action onPress={() => show({ kind: 'reading', run: run.id, id: reading.id })}>See its mark</Action>
        ) : null}
        <Action
          onPress={() =>
            edit(`Delete reading ${label}`, (s) => removeReading(s, { run: run.id, id: reading.id }))
          }
        >
          Delete
        </Action>
      </div>
    </div>
  );
}

function ClockField({
  value,
  onCommit,
}: {
  readonly value: Reading['clock'];
  readonly onCommit: (clock: Reading['clock']) => void;
}) {
  const [text, setText] = useState(value === undefined ? '' : clockText(value));
  const read = text.trim() === '' ? null : parseClockRange(text);
  const commit = () => {
    if (read === null) {
      if (value !== undefined) onCommit(undefined);
    } else if (read.ok && clockText(clockOf(read.value)) !== (value && clockText(value))) {
      onCommit(clockOf(read.value));
    }
  };
  return (
    <TextField
      className={controls.field ?? ''}
      value={text}
      onChange={setText}
      onBlur={commit}
      isInvalid={read?.ok === false}
    >
      <Label className={controls.label ?? ''}>On the wall, o'clock</Label>
      <Input
        className={controls.input ?? ''}
        autoComplete="off"
        onKeyDown={(event) => event.key === 'Enter' && commit()}
      />
      {read?.ok === false ? (
        <Text slot="errorMessage" className={controls.error ?? ''}>
          {words.parseProblemText(read)}
        </Text>
      ) : null}
    </TextField>
  );
}

function clockText(clock: NonNullable<Reading['clock']>): string {
  return clock.to === undefined ? String(clock.from) : `${clock.from}-${clock.to}`;
}

/** Facts of a reading without the keys whose value is undefined: absent is how a site says 'not given'. */
function withoutAbsent({
  id: _,
  number: __,
  clock,
  newZero,
  ...rest
}: Reading): Omit<Reading, 'id' | 'number'> {
  return {
    ...rest,
    ...(clock === undefined ? {} : { clock }),
    ...(newZero === undefined ? {} : { newZero }),
  };
}
