import { useEffect } from 'react';
import { notify, useWorkbench } from '../session/workbench';
import styles from './Notice.module.css';

const SHOWN_MS = 6000;

/** One sentence over the plan that goes by itself. */
export function Notice() {
  const notice = useWorkbench((w) => w.notice);
  useEffect(() => {
    if (notice === null) return;
    const timer = window.setTimeout(() => notify(null), SHOWN_MS);
    return () => window.clearTimeout(timer);
  }, [notice]);
  return (
    <div className={styles.place} role="status">
      {notice === null ? null : <p className={styles.notice}>{notice}</p>}
    </div>
  );
}
