import { type Run, settings, type Zero } from '@footmark/site';
import { useState } from 'react';
import cards from '../cards/cards.module.css';
import { Choice } from '../controls/Choice';
import { LengthField } from '../controls/unitFields';
import { PointField } from '../measure/PointField';
import { useSite } from '../session/siteSession';
import { words } from '../words';
import { CounterField } from './CounterField';
import type { ChangeRun } from './changeRunFacts';
import { entryOf } from './entryOf';
import styles from './runs.module.css';

type Props = { readonly run: Run; readonly change: ChangeRun };

const PLACES = ['in-pipe', 'rim', 'stack-base', 'point'] as const satisfies readonly Zero['at'][];

/** Where the head was when the counter was zeroed, and what that takes to know. */
export function ZeroFields({ run, change }: Props) {
  const { zero } = run;
  const entry = entryOf(useSite(), run);
  // a zero at a point is one when its point is chosen
  const [seeksPoint, setSeeksPoint] = useState(false);
  const at = seeksPoint ? 'point' : zero.at;
  const setZero = (next: Zero) => change('Change the zero', { zero: next });
  const setPlace = (place: Zero['at']) => {
    setSeeksPoint(place === 'point' && zero.at !== 'point');
    if (place === zero.at) return; // a point was looked for and is not wanted any more
    const { counter } = zero;
    if (place === 'rim') {
      const riser = entry?.kind === 'cleanout' ? (entry.fields.riserDepth ?? 0) : 0;
      setZero({ at: place, counter, riser, sweepRadius: settings.bendRadius.value });
    } else if (place !== 'point') setZero({ at: place, counter });
  };
  return (
    <div className={styles.fields}>
      <Choice
        label="Zeroed with the"
        options={PLACES.map((id) => ({ id, name: words.zeroName(id) }))}
        value={at}
        onChange={(place) => place !== at && setPlace(place)}
      />
      {at === 'rim' && zero.at === 'rim' ? (
        <div className={cards.pair}>
          <LengthField
            label="Riser, rim to pipe"
            value={zero.riser}
            required
            onChange={(riser) => riser !== undefined && setZero({ ...zero, riser })}
          />
          <LengthField
            label="Sweep radius"
            value={zero.sweepRadius}
            required
            onChange={(sweepRadius) => sweepRadius !== undefined && setZero({ ...zero, sweepRadius })}
          />
        </div>
      ) : null}
      {at === 'point' ? (
        <PointField
          label="The known point"
          value={zero.at === 'point' ? zero.point : null}
          onChoose={(point) => {
            if (setZero({ at: 'point', counter: zero.counter, point })) setSeeksPoint(false);
          }}
        />
      ) : null}
      <CounterField
        label="The counter then showed"
        value={zero.counter}
        required
        onChange={(counter) => counter !== undefined && setZero({ ...zero, counter })}
      />
    </div>
  );
}
