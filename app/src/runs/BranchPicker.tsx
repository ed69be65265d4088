import type { Run } from '@footmark/site';
import styles from '../cards/cards.module.css';
import { Action } from '../controls/Action';
import { Choice } from '../controls/Choice';
import { useDerived, useSite } from '../session/siteSession';
import { words } from '../words';
import type { ChangeRun } from './changeRunFacts';

type Props = { readonly run: Run; readonly change: ChangeRun };

/** At a junction a camera pushed against the flow takes one of two pipes: which branches it turned into, in order. */
export function BranchPicker({ run, change }: Props) {
  const site = useSite();
  const derived = useDerived();
  const last = run.branches.at(-1) ?? run.path;
  const next = [...derived.paths.values()].filter(
    (p) => p.joins?.path === last && !run.branches.includes(p.path.id),
  );
  const name = (id: string) => words.targetName({ kind: 'path', id }, site);
  if (next.length === 0 && run.branches.length === 0) return null;
  return (
    <div className={styles.section}>
      {run.branches.length > 0 ? (
        <p>
          Turned into {run.branches.map(name).join(', then ')}.{' '}
          <Action
            look="quiet"
            onPress={() => change('Change the branches', { branches: run.branches.slice(0, -1) })}
          >
            Take back the last
          </Action>
        </p>
      ) : null}
      {next.length > 0 ? (
        <Choice
          label="Turned into a branch"
          options={next.map((p) => ({ id: p.path.id, name: name(p.path.id) }))}
          value={null}
          placeholder="No: stayed in the pipe"
          onChange={(id) => change('Change the branches', { branches: [...run.branches, id] })}
        />
      ) : null}
    </div>
  );
}
