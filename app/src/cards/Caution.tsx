import { words } from '../words';
import styles from './cards.module.css';

/** What must be said wherever a place to dig is shown. */
export function Caution() {
  const call = words.cautionText('call-before-digging');
  const not = words.cautionText('not-a-utility-locate');
  return (
    <aside className={styles.caution}>
      <strong>{call.title}</strong> {call.text} {not.text}
    </aside>
  );
}
