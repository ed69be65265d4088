import type { GroundState, Mark } from '@footmark/site';
import { DateField } from '../controls/DateField';
import { Segments } from '../controls/Segments';
import { today } from '../session/today';
import { words } from '../words';
import { changeMark } from './changeMark';

const STATES = ['painted', 'flagged', 'dug', 'found'] as const satisfies readonly GroundState['state'][];

/** What was done on the ground about a mark, with one tap, and on which day. */
export function GroundSection({ mark }: { readonly mark: Mark }) {
  const { ground } = mark.reading;
  const set = (state: GroundState['state'] | 'none') => {
    const name = state === 'none' ? 'nothing done yet' : words.markStateName(state).toLowerCase();
    changeMark(`Mark ${mark.label}: ${name}`, mark, {
      ground: state === 'none' ? undefined : { state, date: today() },
    });
  };
  return (
    <>
      <Segments
        label="On the ground"
        value={ground?.state ?? 'none'}
        options={[
          { id: 'none', name: 'Not yet' },
          ...STATES.map((state) => ({ id: state, name: words.markStateName(state) })),
        ]}
        onChange={set}
      />
      {ground === undefined ? null : (
        <DateField
          label={`${words.markStateName(ground.state)} on`}
          value={ground.date}
          onChange={(date) =>
            changeMark(`Mark ${mark.label}: change the day`, mark, {
              ground: { state: ground.state, ...(date === undefined ? {} : { date }) },
            })
          }
        />
      )}
    </>
  );
}
