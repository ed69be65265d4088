import type { Run } from '@footmark/site';
import { Choice } from '../controls/Choice';
import { useSite } from '../session/siteSession';
import { words } from '../words';
import { CounterField } from './CounterField';
import type { ChangeRun } from './changeRunFacts';
import { HeadFields } from './HeadFields';
import styles from './runs.module.css';
import { ScaleFields } from './ScaleFields';
import { visitsLatestFirst } from './visitOrder';

type Props = { readonly run: Run; readonly change: ChangeRun };

/** What is mostly as it was on the last run: the counter, the camera head, the visit. */
export function RunDetails({ run, change }: Props) {
  const { visits } = useSite();
  return (
    <>
      <ScaleFields run={run} change={change} />
      <div className={styles.fields}>
        <CounterField
          label="Counter shows steps of"
          value={run.resolution}
          required
          onChange={(resolution) =>
            resolution !== undefined && change('Change the counter step', { resolution })
          }
        />
        <HeadFields run={run} change={change} />
      </div>
      <Choice
        label="Made on the visit"
        options={[
          { id: '', name: 'No visit yet' },
          ...visitsLatestFirst(visits).map((v) => ({ id: v.id, name: words.visitName(v) })),
        ]}
        value={run.visit ?? ''}
        onChange={(visit) => change('Put the run into a visit', { visit: visit === '' ? null : visit })}
      />
    </>
  );
}
