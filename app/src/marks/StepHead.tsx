import { ArrowLeft, ChevronLeft, ChevronRight } from 'lucide-react';
import cards from '../cards/cards.module.css';
import { Action } from '../controls/Action';
import { select } from '../session/workbench';

type Props<T> = {
  readonly all: readonly T[];
  /** Where in them it is. */
  readonly index: number;
  readonly show: (one: T) => void;
  /** What the two buttons are called. */
  readonly before: string;
  readonly next: string;
};

/** Above one of what Marks lists: the way back to the list, and to the one before and after. */
export function StepHead<T>({ all, index, show, before, next }: Props<T>) {
  const goTo = (to: T | undefined) => to && show(to);
  return (
    <div className={cards.head}>
      <Action look="quiet" onPress={() => select(null)}>
        <ArrowLeft size={20} aria-hidden /> Marks
      </Action>
      <span className={cards.actions}>
        <Action look="icon" aria-label={before} isDisabled={index <= 0} onPress={() => goTo(all[index - 1])}>
          <ChevronLeft size={22} aria-hidden />
        </Action>
        <Action
          look="icon"
          aria-label={next}
          isDisabled={index >= all.length - 1}
          onPress={() => goTo(all[index + 1])}
        >
          <ChevronRight size={22} aria-hidden />
        </Action>
      </span>
    </div>
  );
}
