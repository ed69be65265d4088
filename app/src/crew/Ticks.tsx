import { type FoundState, foundStates } from '@footmark/site';
import { Check } from 'lucide-react';
import { ToggleButton } from 'react-aria-components';
import { words } from '../words';
import { stateOf } from './answerEdits';
import { tick, useCrewSession } from './crewSession';
import styles from './stop.module.css';
import type { Stop } from './stops';

/** How far the crew has come with a mark, one tap each; a second tap takes it back. */
export function Ticks({ stop }: { readonly stop: Stop }) {
  const answer = useCrewSession((s) => s.answer);
  const state = answer === null ? null : stateOf(answer, stop.about);
  const ticked = (of: FoundState) =>
    answer?.ticks.some((t) => t.state === of && JSON.stringify(t.about) === JSON.stringify(stop.about)) ===
    true;
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset does not lay its children out in a row in every browser
    <div className={styles.ticks} role="group" aria-label={words.crew.label('done-here')}>
      {foundStates.map((of) => (
        <ToggleButton
          key={of}
          className={styles.tick ?? ''}
          isSelected={state === of}
          onChange={() => tick(stop, of)}
        >
          {ticked(of) ? <Check size={20} strokeWidth={3} aria-hidden /> : null}
          {words.crew.stateName(of)}
        </ToggleButton>
      ))}
    </div>
  );
}
