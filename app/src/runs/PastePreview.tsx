import { formatClock, formatVideoTime, type Reading, type Run } from '@footmark/site';
import { counterText } from '@footmark/words';
import { useState } from 'react';
import cards from '../cards/cards.module.css';
import { useMoreInSight } from '../cards/useMoreInSight';
import { Tick } from '../controls/Tick';
import { useSite } from '../session/siteSession';
import { words } from '../words';
import type { PastedLine, PastedReading } from './pastedTable';
import styles from './runs.module.css';

type Props = {
  readonly run: Run;
  readonly lines: readonly PastedLine[];
  readonly coming: readonly PastedReading[];
};

/** Every row of the pasted text: the reading that it becomes, and what is not taken over, in words. */
export function PastePreview({ run, lines, coming }: Props) {
  const [troubledOnly, setTroubledOnly] = useState(false);
  const byLine = new Map(coming.map(({ line, reading }) => [line, reading]));
  const troubled = lines.filter((l) => l.problems.length > 0 || !byLine.has(l.line));
  const listed = troubledOnly && troubled.length > 0 ? troubled : lines;
  const { shown, end } = useMoreInSight<HTMLLIElement>(listed.length);
  const out = lines.length - coming.length;
  return (
    <div className={cards.section}>
      <p role="status">
        <b>{coming.length === 1 ? 'One reading comes in' : `${coming.length} readings come in`}</b>
        {out === 0 ? '.' : out === 1 ? ', one row stays out.' : `, ${out} rows stay out.`}
      </p>
      {troubled.length === 0 || troubled.length === lines.length ? null : (
        <Tick isSelected={troubledOnly} onChange={setTroubledOnly}>
          Only rows that something is the matter with
        </Tick>
      )}
      <ul className={cards.rows} aria-label="Rows of the table">
        {listed.slice(0, shown).map((line) => (
          <PreviewRow key={line.line} run={run} line={line} reading={byLine.get(line.line)} />
        ))}
        {shown < listed.length ? <li ref={end} aria-hidden /> : null}
      </ul>
    </div>
  );
}

type RowProps = {
  readonly run: Run;
  readonly line: PastedLine;
  readonly reading: Reading | undefined;
};

function PreviewRow({ run, line, reading }: RowProps) {
  const { units } = useSite();
  const counter = line.row?.counter;
  return (
    <li className={styles.previewRow} data-out={reading === undefined}>
      {reading === undefined ? (
        <span className={styles.out}>out</span>
      ) : (
        <span className={cards.paint}>
          {run.letter}
          {reading.number}
        </span>
      )}
      <span className={cards.grow}>
        {reading === undefined ? `Line ${line.line}` : seenText(reading)}
        {reading === undefined ? null : <small>{saidText(reading)}</small>}
        {line.problems.map((problem) => (
          <span key={`${problem.code} ${problem.column}`} className={styles.previewProblem}>
            {words.tableProblemText(problem)}
          </span>
        ))}
      </span>
      {counter === undefined ? null : <span className={cards.number}>{counterText(counter, units)}</span>}
    </li>
  );
}

function seenText({ seen, clock }: Reading): string {
  return `${words.observationName(seen)}${clock === undefined ? '' : `, ${formatClock(clock)}`}`;
}

function saidText({ passed, note, videoAt }: Reading): string {
  return [
    ...(passed ? [] : ['could not pass']),
    ...(videoAt === undefined ? [] : [`at ${formatVideoTime(videoAt)}`]),
    ...(note === '' ? [] : [note]),
  ].join(', ');
}
