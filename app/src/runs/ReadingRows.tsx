import { type Finding, formatClock, type Reading, type Run, type Units } from '@footmark/site';
import { counterText, lengthText } from '@footmark/words';
import { memo, useMemo, useState } from 'react';
import { Button } from 'react-aria-components';
import cards from '../cards/cards.module.css';
import { FindingRow } from '../cards/FindingRow';
import { useMoreInSight } from '../cards/useMoreInSight';
import { useDerived, useSite } from '../session/siteSession';
import { words } from '../words';
import { ReadingForm } from './ReadingForm';

type Props = { readonly run: Run; readonly findings: ReadonlyMap<string, readonly Finding[]> };

/** The readings of a run, each with the station that it comes to; one at a time is open for change. */
export function ReadingRows({ run, findings }: Props) {
  const { units } = useSite();
  const { marks } = useDerived();
  const [open, setOpen] = useState<string | null>(null);
  const { shown, end } = useMoreInSight<HTMLLIElement>(run.readings.length);
  const toggle = useMemo(() => (id: string) => setOpen((now) => (now === id ? null : id)), []);
  const stations = new Map(marks.map((m) => [m.reading.id, m.place?.station]));
  return (
    <ul className={cards.rows} aria-label={`Readings of run ${run.letter}`}>
      {run.readings.slice(0, shown).map((reading) => (
        <li key={reading.id}>
          <ReadingRow
            letter={run.letter}
            reading={reading}
            station={stations.get(reading.id)}
            units={units}
            isOpen={open === reading.id}
            onToggle={toggle}
          />
          {findings.get(reading.id)?.map((finding) => (
            <FindingRow key={finding.code} finding={finding} />
          ))}
          {open === reading.id ? <ReadingForm run={run} reading={reading} /> : null}
        </li>
      ))}
      {shown < run.readings.length ? <li ref={end} aria-hidden /> : null}
    </ul>
  );
}

type RowProps = {
  readonly letter: string;
  readonly reading: Reading;
  readonly station: number | undefined;
  readonly units: Units;
  readonly isOpen: boolean;
  readonly onToggle: (reading: string) => void;
};

const ReadingRow = memo(function ReadingRow({ letter, reading, station, units, isOpen, onToggle }: RowProps) {
  return (
    <Button className={cards.row ?? ''} onPress={() => onToggle(reading.id)} aria-expanded={isOpen}>
      <span className={cards.paint}>
        {letter}
        {reading.number}
      </span>
      <span className={cards.grow}>
        {words.observationName(reading.seen)}
        {reading.clock ? `, ${formatClock(reading.clock)}` : ''}
        <small>
          {[
            station === undefined ? 'no place on the line' : `station ${lengthText(station, units)}`,
            ...saidOf(reading),
          ].join(', ')}
        </small>
      </span>
      <span className={cards.number}>{countedText(reading, units)}</span>
    </Button>
  );
});

/** `39.4 ft`, or `39.4 – 46.2 ft` for what goes on. */
function countedText({ counter, to }: Reading, units: Units): string {
  const from = counterText(counter, units);
  return to === undefined ? from : `${from.replace(/ \D+$/, '')} – ${counterText(to, units)}`;
}

function saidOf({ severity, passed, newZero, note }: Reading): readonly string[] {
  return [
    ...(severity === undefined ? [] : [words.severityName(severity).toLowerCase()]),
    ...(passed ? [] : ['could not pass']),
    ...(newZero === undefined ? [] : ['counter set anew']),
    ...(note === '' ? [] : [note]),
  ];
}
