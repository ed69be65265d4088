import { Link } from 'wouter';
import { NewerVersion } from './NewerVersion';
import { useProgram } from './newerVersion';
import styles from './ProgramLine.module.css';

/** The line at the foot of the first screen: what the program is, and whether it is here without a network. Always there, so that nothing jumps. */
export function ProgramLine() {
  const { isKept, hasNewer } = useProgram();
  return (
    <aside className={styles.line} aria-label="This program">
      <Link href="/about" className={styles.link ?? ''}>
        About Footmark
      </Link>
      <span role="status" className={styles.state}>
        {hasNewer ? <NewerVersion /> : isKept ? 'Works without a network' : null}
      </span>
    </aside>
  );
}
