import { moveReading, type Reading, type ReadingFacts, type Run, removeReading } from '@footmark/site';
import { lengthText } from '@footmark/words';
import { ArrowDown, ArrowUp, MapPin, Trash2 } from 'lucide-react';
import cards from '../cards/cards.module.css';
import { Action } from '../controls/Action';
import { Choice } from '../controls/Choice';
import { TextLine } from '../controls/TextLine';
import { Tick } from '../controls/Tick';
import { edit, useDerived, useSite } from '../session/siteSession';
import { notifyOfEdit, show } from '../session/workbench';
import { words } from '../words';
import { ClockField } from './ClockField';
import { CounterField } from './CounterField';
import { ReadingDetails } from './ReadingDetails';
import { changeFacts } from './readingFacts';
import styles from './runs.module.css';
import { seenOptions } from './seenOptions';

type Props = { readonly run: Run; readonly reading: Reading };

/** Everything of one reading, each field its own step of undo, and its place among the others. */
export function ReadingForm({ run, reading }: Props) {
  const change = (part: ReadingFacts) => changeFacts(run, reading, part);
  return (
    <div className={cards.vertexForm}>
      <Place reading={reading} />
      <div className={styles.four}>
        <CounterField
          label="Counter"
          value={reading.counter}
          required
          onChange={(counter) => counter !== undefined && change({ counter })}
        />
        <Choice
          label="Seen"
          options={seenOptions}
          value={reading.seen}
          onChange={(seen) => change({ seen })}
        />
        <ClockField value={reading.clock} onChange={(clock) => change({ clock })} />
        <Tick isSelected={!reading.passed} onChange={(stuck) => change({ passed: !stuck })}>
          Could not pass
        </Tick>
      </div>
      <TextLine label="Note" value={reading.note} maxLength={5000} onCommit={(note) => change({ note })} />
      <ReadingDetails facts={reading} onChange={change} counter={reading.counter} />
      <ReadingActions run={run} reading={reading} />
    </div>
  );
}

/** Where the reading comes to on the line. */
function Place({ reading }: { readonly reading: Reading }) {
  const site = useSite();
  const place = useDerived().marks.find((m) => m.reading.id === reading.id)?.place;
  if (!place) return null;
  return (
    <p>
      Comes to station {lengthText(place.station, site.units)} of{' '}
      {words.targetName({ kind: 'path', id: place.path }, site)}.
    </p>
  );
}

function ReadingActions({ run, reading }: Props) {
  const hasPlace = useDerived().marks.some((m) => m.reading.id === reading.id && m.place !== null);
  const label = `${run.letter}${reading.number}`;
  const at = run.readings.findIndex((r) => r.id === reading.id);
  const move = (to: number) =>
    edit(`Move reading ${label}`, (s) => moveReading(s, { run: run.id, id: reading.id, to }));
  const remove = () => {
    if (edit(`Delete reading ${label}`, (s) => removeReading(s, { run: run.id, id: reading.id })))
      notifyOfEdit(`Reading ${label} is deleted.`);
  };
  return (
    <div className={styles.rowActions}>
      <Action onPress={() => move(at - 1)} isDisabled={at === 0} aria-label={`Move ${label} up`}>
        <ArrowUp size={20} aria-hidden /> Up
      </Action>
      <Action
        onPress={() => move(at + 1)}
        isDisabled={at === run.readings.length - 1}
        aria-label={`Move ${label} down`}
      >
        <ArrowDown size={20} aria-hidden /> Down
      </Action>
      {hasPlace ? (
        <Action onPress={() => show({ kind: 'reading', run: run.id, id: reading.id })}>
          <MapPin size={20} aria-hidden /> See its mark
        </Action>
      ) : null}
      <Action onPress={remove} aria-label={`Delete ${label}`}>
        <Trash2 size={20} aria-hidden /> Delete
      </Action>
    </div>
  );
}
