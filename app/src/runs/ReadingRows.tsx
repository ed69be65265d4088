import { type Finding, formatClock, type Reading, type Run, type Units } from '@footmark/site';
import { counterText, lengthText } from '@footmark/words';
import { useState } from 'react';
import { Button } from 'react-aria-components';
import cards from '../cards/cards.module.css';
import { FindingRow } from '../cards/FindingRow';
import { useDerived, useSite } from '../session/siteSession';
import { words } from '../words';
import { ReadingForm } from './ReadingForm';
import { useMoreInSight } from './useMoreInSight';

type Props = { readonly run: Run; readonly findings: ReadonlyMap<string, readonly Finding[]> };

/** The readings of a run, each with the station that it comes to; one at a time is open for change. */
export function ReadingRows({ run, findings }: Props) {
  const site = useSite();
  const { marks } = useDerived();
  const [open, setOpen] = useState<string | null>(null);
  const { shown, end } = useMoreInSight<HTMLLIElement>(run.readings.length);
  const stations = new Map(marks.map((m) => [m.reading.id, m.place?.station]));
  return (
    <ul className={cards.rows} aria-label={`Readings of run ${run.letter}`}>
      {run.readings.slice(0, shown).map((reading) => {
        const station = stations.get(reading.id);
        return (
          <li key={reading.id}>
            <Button
              className={cards.row ?? ''}
              onPress={() => setOpen(open === reading.id ? null : reading.id)}
              aria-expanded={open === reading.id}
            >
              <span className={cards.paint}>
                {run.letter}
                {reading.number}
              </span>
              <span className={cards.grow}>
                {words.observationName(reading.seen)}
                {reading.clock ? `, ${formatClock(reading.clock)}` : ''}
                <small>
                  {[
                    station === undefined
                      ? 'no place on the line'
                      : `station ${lengthText(station, site.units)}`,
                    ...saidOf(reading),
                  ].join(', ')}
                </small>
              </span>
              <span className={cards.number}>{countedText(reading, site.units)}</span>
            </Button>
            {findings.get(reading.id)?.map((finding) => (
              <FindingRow key={finding.code} finding={finding} />
            ))}
            {open === reading.id ? <ReadingForm run={run} reading={reading} /> : null}
          </li>
        );
      })}
      {shown < run.readings.length ? <li ref={end} aria-hidden /> : null}
    </ul>
  );
}

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
