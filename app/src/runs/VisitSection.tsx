import type { Run, Visit } from '@footmark/site';
import { useId } from 'react';
import cards from '../cards/cards.module.css';
import { Action } from '../controls/Action';
import { words } from '../words';
import { RunRow } from './RunRow';
import styles from './runs.module.css';
import { VisitForm } from './VisitForm';

type Props = {
  readonly visit: Visit;
  readonly runs: readonly Run[];
  /** The next run belongs to it. */
  readonly isLatest: boolean;
  readonly isOpen: boolean;
  readonly onToggle: () => void;
};

/** A day's work: when and what for, and its runs. */
export function VisitSection({ visit, runs, isLatest, isOpen, onToggle }: Props) {
  const heading = useId();
  const name = words.visitName(visit);
  return (
    <section className={styles.visit} aria-labelledby={heading}>
      <div className={styles.visitHead}>
        <div className={cards.grow}>
          <h3 id={heading}>{name}</h3>
          {visit.note && !isOpen ? <p className={cards.sub}>{visit.note}</p> : null}
        </div>
        <Action look="quiet" aria-expanded={isOpen} aria-label={`Change ${name}`} onPress={onToggle}>
          Change
        </Action>
      </div>
      {isOpen ? <VisitForm visit={visit} onClose={onToggle} /> : null}
      {runs.length > 0 ? (
        <ul className={cards.rows}>
          {runs.map((run) => (
            <li key={run.id}>
              <RunRow run={run} />
            </li>
          ))}
        </ul>
      ) : (
        <p className={cards.empty}>
          {isLatest ? 'No run yet. The next one that you add belongs here.' : 'No run.'}
        </p>
      )}
    </section>
  );
}
