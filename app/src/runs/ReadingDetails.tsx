import {
  type ActionWord,
  actionIds,
  formatVideoTime,
  parseNumber,
  parseVideoTime,
  type Reading,
  type ReadingFacts,
  type SeverityWord,
  severityIds,
} from '@footmark/site';
import { X } from 'lucide-react';
import { Action } from '../controls/Action';
import { Choice } from '../controls/Choice';
import { MeasureField } from '../controls/MeasureField';
import { PointField } from '../measure/PointField';
import { PhotoField } from '../pictures/PhotoField';
import { words } from '../words';
import { CounterField } from './CounterField';
import styles from './runs.module.css';

type Props = {
  readonly facts: ReadingFacts & Pick<Reading, 'seen'>;
  readonly onChange: (change: ReadingFacts) => void;
  /** What the counter shows where it begins, if that is typed. */
  readonly counter: number | undefined;
};

/** What may be said of a reading besides its counter, what was seen, the clock and a note. All of it may be left empty. */
export function ReadingDetails({ facts, onChange, counter }: Props) {
  const holdsWater = facts.seen === 'sag' || facts.seen === 'water-level' || facts.water !== undefined;
  const endsBefore = facts.to !== undefined && counter !== undefined && facts.to < counter;
  return (
    <>
      <div className={styles.four}>
        <Choice
          label="How bad"
          options={withNone<SeverityWord>(severityIds, words.severityName)}
          value={facts.severity ?? ''}
          onChange={(severity) => onChange({ severity: severity === '' ? undefined : severity })}
        />
        <Choice
          label="Advised"
          options={withNone<ActionWord>(actionIds, words.actionName)}
          value={facts.action ?? ''}
          onChange={(action) => onChange({ action: action === '' ? undefined : action })}
        />
        <CounterField
          label="Goes on to"
          value={facts.to}
          {...(endsBefore ? { hint: 'Lower than where it begins.' } : {})}
          onChange={(to) => onChange({ to })}
        />
        <CounterField
          label="Counter set anew to"
          value={facts.newZero}
          onChange={(newZero) => onChange({ newZero })}
        />
        <MeasureField
          label="Time in the video"
          value={facts.videoAt}
          parse={parseVideoTime}
          print={formatVideoTime}
          placeholder="12:34"
          onChange={(videoAt) => onChange({ videoAt })}
        />
        {holdsWater ? (
          <MeasureField
            label="Water, share of the pipe"
            value={facts.water}
            parse={(text) => parseNumber(text, { mark: '%', per: 1 / 100, most: 1 })}
            print={(share) => `${Number((100 * share).toFixed(1))} %`}
            placeholder="30 %"
            onChange={(water) => onChange({ water })}
          />
        ) : null}
      </div>
      <div className={styles.point}>
        <PointField
          label="Point that was seen"
          value={facts.seenAt ?? null}
          onChoose={(seenAt) => onChange({ seenAt })}
        />
        {facts.seenAt === undefined ? null : (
          <Action
            look="icon"
            aria-label="No point that was seen"
            onPress={() => onChange({ seenAt: undefined })}
          >
            <X size={20} aria-hidden />
          </Action>
        )}
      </div>
      <PhotoField label="Photo" value={facts.photo} onChange={(photo) => onChange({ photo })} />
    </>
  );
}

function withNone<Id extends string>(ids: readonly Id[], name: (id: Id) => string) {
  return [{ id: '' as const, name: 'Not said' }, ...ids.map((id) => ({ id, name: name(id) }))];
}
