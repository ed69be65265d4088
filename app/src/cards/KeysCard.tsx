import { X } from 'lucide-react';
import { Action } from '../controls/Action';
import { shortcuts } from '../screens/shortcuts';
import styles from './cards.module.css';

/** The keys that work wherever nothing is being typed. */
export function KeysCard({ onClose }: { readonly onClose: () => void }) {
  return (
    <section className={styles.card} aria-label="Keys">
      <div className={styles.head}>
        <h2>Keys</h2>
        <Action look="quiet" onPress={onClose}>
          <X size={20} aria-hidden /> Close
        </Action>
      </div>
      <dl className={styles.facts}>
        {shortcuts.map((shortcut) => (
          <div key={shortcut.says} className={styles.factRow}>
            <dt>
              <kbd>{shortcut.shown}</kbd>
            </dt>
            <dd>{shortcut.says}</dd>
          </div>
        ))}
        {BY_HAND.map(([hand, says]) => (
          <div key={says} className={styles.factRow}>
            <dt>{hand}</dt>
            <dd>{says}</dd>
          </div>
        ))}
      </dl>
    </section>
  );
}

const BY_HAND = [
  ['Wheel, pinch', 'Closer and further'],
  ['Shift and tap', 'Add to what is chosen'],
  ['Shift and drag', 'Choose all in a box'],
  ['Long press', 'Add to what is chosen'],
  ['Alt while drawing', 'No pull to lines and angles'],
] as const;
