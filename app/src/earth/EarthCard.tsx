import { X } from 'lucide-react';
import cards from '../cards/cards.module.css';
import { Action } from '../controls/Action';
import { EarthFields } from './EarthFields';

/** North and place on the earth as a card of its own, for who comes from the north arrow. */
export function EarthCard({ onClose }: { readonly onClose: () => void }) {
  return (
    <section className={cards.card} aria-label="North and place on the earth">
      <div className={cards.head}>
        <h2>North and place on the earth</h2>
        <Action look="quiet" onPress={onClose}>
          <X size={20} aria-hidden /> Close
        </Action>
      </div>
      <EarthFields />
    </section>
  );
}
