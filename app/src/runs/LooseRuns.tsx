import { changeRun, type Run } from '@footmark/site';
import cards from '../cards/cards.module.css';
import { Choice } from '../controls/Choice';
import { edit, useSite } from '../session/siteSession';
import { words } from '../words';
import { RunRow } from './RunRow';
import styles from './runs.module.css';
import { visitsLatestFirst } from './visitOrder';

/** Runs of which nobody has said on which visit they were made. */
export function LooseRuns({ runs }: { readonly runs: readonly Run[] }) {
  const { visits } = useSite();
  return (
    <section className={styles.visit} aria-label="No visit yet">
      <div className={styles.visitHead}>
        <h3>No visit yet</h3>
      </div>
      <ul className={cards.rows}>
        {runs.map((run) => (
          <li key={run.id}>
            <RunRow run={run} />
          </li>
        ))}
      </ul>
      {visits.length === 0 ? null : (
        <Choice
          label={runs.length === 1 ? 'It was made on the visit' : 'All of them were made on the visit'}
          options={visitsLatestFirst(visits).map((v) => ({ id: v.id, name: words.visitName(v) }))}
          value={null}
          onChange={(visit) =>
            edit('Put runs into a visit', (s) =>
              runs.reduce((site, { id }) => changeRun(site, { id, facts: { visit } }), s),
            )
          }
        />
      )}
    </section>
  );
}
