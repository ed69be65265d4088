import { useEffect } from 'react';
import { undo } from '../session/siteSession';
import { notify, useWorkbench } from '../session/workbench';
import styles from './Notice.module.css';

/** Long enough to read, and to undo. */
const SHOWN_MS = { plain: 6000, withUndo: 12_000 };

/** A sentence over the plan that goes by itself. */
export function Notice() {
  const notice = useWorkbench((w) => w.notice);
  useEffect(() => {
    if (notice === null) return;
    const timer = window.setTimeout(() => notify(null), notice.canUndo ? SHOWN_MS.withUndo : SHOWN_MS.plain);
    return () => window.clearTimeout(timer);
  }, [notice]);
  return (
    <div className={styles.place} role="status">
      {notice === null ? null : (
        <p className={styles.notice}>
          {notice.text}
          {notice.canUndo ? (
            <button
              type="button"
              onClick={() => {
                notify(null);
                undo();
              }}
            >
              Undo
            </button>
          ) : null}
        </p>
      )}
    </div>
  );
}
