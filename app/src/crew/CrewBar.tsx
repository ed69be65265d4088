import { ChevronLeft, ChevronRight } from 'lucide-react';
import { Action } from '../controls/Action';
import { words } from '../words';
import { recordOf } from './answerEdits';
import { useCrewSession } from './crewSession';
import styles from './stop.module.css';
import type { Stop } from './stops';

type Props = {
  readonly stop: Stop;
  readonly isFirst: boolean;
  readonly isLast: boolean;
  readonly onStep: (by: -1 | 1) => void;
  readonly onPutDown: () => void;
};

/** Under the thumb: the mark before, what was found here, the next mark. */
export function CrewBar({ stop, isFirst, isLast, onStep, onPutDown }: Props) {
  const known = useCrewSession((s) => (s.answer === null ? null : recordOf(s.answer, stop.about)));
  const { label } = words.crew;
  return (
    <nav className={styles.bar}>
      <Action look="icon" aria-label={label('mark-before')} isDisabled={isFirst} onPress={() => onStep(-1)}>
        <ChevronLeft size={32} aria-hidden />
      </Action>
      <Action look="primary" wide onPress={onPutDown}>
        {label(known === null ? 'we-found' : 'change-found')}
      </Action>
      <Action look="icon" aria-label={label('next-mark')} isDisabled={isLast} onPress={() => onStep(1)}>
        <ChevronRight size={32} aria-hidden />
      </Action>
    </nav>
  );
}
