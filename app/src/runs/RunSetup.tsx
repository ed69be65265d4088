import { kindSpec, type Run } from '@footmark/site';
import { Choice } from '../controls/Choice';
import { Segments } from '../controls/Segments';
import { useSite } from '../session/siteSession';
import { words } from '../words';
import { BranchPicker } from './BranchPicker';
import type { ChangeRun } from './changeRunFacts';
import styles from './runs.module.css';
import { ZeroFields } from './ZeroFields';

type Props = { readonly run: Run; readonly change: ChangeRun };

/** What every run needs to lead to marks: the way in, the pipe, the direction and the zero. */
export function RunSetup({ run, change }: Props) {
  const site = useSite();
  const entries = site.features.filter((f) => kindSpec(f.kind).entry);
  return (
    <>
      <div className={styles.fields}>
        <Choice
          label="Went in at"
          options={entries.map((f) => ({
            id: f.id,
            name: words.targetName({ kind: 'feature', id: f.id }, site),
          }))}
          value={run.entry}
          onChange={(entry) => change('Change the entry', { entry })}
        />
        <Choice
          label="Into the pipe"
          options={site.paths.map((p) => ({
            id: p.id,
            name: words.targetName({ kind: 'path', id: p.id }, site),
          }))}
          value={run.path}
          onChange={(path) => change('Change the pipe of the run', { path, branches: [] })}
        />
      </div>
      <Segments
        label="Pushed"
        options={(['with-flow', 'against-flow'] as const).map((id) => ({
          id,
          name: words.directionName(id),
        }))}
        value={run.direction}
        onChange={(direction) => change('Turn the run round', { direction, branches: [] })}
      />
      {run.direction === 'against-flow' ? <BranchPicker run={run} change={change} /> : null}
      <ZeroFields run={run} change={change} />
    </>
  );
}
