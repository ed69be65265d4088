import { X } from 'lucide-react';
import { Button } from 'react-aria-components';
import { Action } from '../controls/Action';
import { redo, undo, useHistorySteps } from '../session/siteSession';
import styles from './cards.module.css';
import { VersionsSection } from './VersionsSection';

/** Every step since the site was opened, the last first; a tap goes back to it, or on to it. */
export function HistoryCard({ onClose }: { readonly onClose: () => void }) {
  const { done, undone } = useHistorySteps();
  return (
    <section className={styles.card} aria-label="History">
      <div className={styles.head}>
        <h2>History</h2>
        <Action look="quiet" onPress={onClose}>
          <X size={20} aria-hidden /> Close
        </Action>
      </div>
      {done.length + undone.length === 0 ? (
        <p className={styles.empty}>Nothing has been changed since the site was opened.</p>
      ) : (
        <ol className={styles.rows}>
          {undone.map((name, i) => (
            // steps have no identity but their place in the history
            // biome-ignore lint/suspicious/noArrayIndexKey: the list is rebuilt as a whole
            <li key={`u${i}`}>
              <Button className={styles.row ?? ''} onPress={() => redo(undone.length - i)}>
                <span className={styles.grow}>
                  {name}
                  <small>undone</small>
                </span>
              </Button>
            </li>
          ))}
          {done.map((name, i) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: the list is rebuilt as a whole
            <li key={`d${i}`}>
              <Button className={styles.row ?? ''} onPress={() => undo(i)} aria-current={i === 0}>
                <span className={styles.grow}>
                  {name}
                  {i === 0 ? <small>as it is now</small> : null}
                </span>
              </Button>
            </li>
          ))}
          <li>
            <Button className={styles.row ?? ''} onPress={() => undo(done.length)}>
              <span className={styles.grow}>As it was opened</span>
            </Button>
          </li>
        </ol>
      )}
      <VersionsSection />
    </section>
  );
}
