import { Check, Scale, Undo } from 'lucide-react';
import cards from '../cards/cards.module.css';
import { Action } from '../controls/Action';
import { toggleLeaf } from '../session/workbench';
import { useFit, useWeighing } from './fitSession';
import { backToDrawn, isWorthTaking, takeTheFit } from './takeTheFit';

type Props = {
  /** Offers to look at the evidence too. */
  readonly withDetails?: boolean;
};

/** What can be done with the fit as it stands. */
export function FitActions({ withDetails = false }: Props) {
  const { fit } = useFit();
  const { busy, failed } = useWeighing();
  if (fit === null) return null;
  const doubtful = fit.blunders.length > 0 || fit.status !== 'fitted';
  const worth = isWorthTaking(fit);
  return (
    <div className={cards.actions}>
      {withDetails ? (
        <Action look={doubtful ? 'primary' : 'plain'} onPress={() => toggleLeaf('fit')}>
          <Scale size={20} aria-hidden /> See how it agrees
        </Action>
      ) : null}
      {worth ? (
        <Action look={doubtful ? 'plain' : 'primary'} onPress={takeTheFit} isDisabled={busy || failed}>
          <Check size={20} aria-hidden /> {fit.taken ? 'Take it anew' : 'Take the fit'}
        </Action>
      ) : null}
      {fit.taken ? (
        <Action onPress={backToDrawn}>
          <Undo size={20} aria-hidden /> Back to as drawn
        </Action>
      ) : null}
    </div>
  );
}
