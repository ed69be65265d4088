import type { Mark, MarkPlace } from '@footmark/site';
import { Trash2 } from 'lucide-react';
import cards from '../cards/cards.module.css';
import { Fold } from '../cards/Fold';
import { Action } from '../controls/Action';
import { changeMark } from './changeMark';
import { OffsetForm } from './OffsetForm';
import { TapesList } from './TapesList';

type Props = { readonly mark: Mark; readonly place: MarkPlace };

/** For a mark that cannot be painted: where paint stands instead. With that said, the tapes to the mark itself. */
export function OffsetSection({ mark, place }: Props) {
  if (place.paint === null) {
    return (
      <Fold key="form" title="Paint stands elsewhere">
        <p className={cards.empty}>
          For a mark on a deck, in a bed or in water: paint beside it, with an arrow back to it.
        </p>
        <OffsetForm mark={mark} />
      </Fold>
    );
  }
  return (
    <Fold key="itself" title="The mark itself">
      {place.ties ? (
        <TapesList ties={place.ties} />
      ) : (
        <p className={cards.empty}>No tapes reach the mark itself.</p>
      )}
      <div className={cards.actions}>
        <Action onPress={() => changeMark(`Paint ${mark.label} on its place`, mark, { offset: undefined })}>
          <Trash2 size={20} aria-hidden /> Paint on the mark after all
        </Action>
      </div>
    </Fold>
  );
}
