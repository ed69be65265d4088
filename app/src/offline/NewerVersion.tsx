import { useState } from 'react';
import { Action } from '../controls/Action';
import { takeNewer, useProgram } from './newerVersion';
import styles from './ProgramLine.module.css';

/** Offers a newer version; nobody is hurried. */
export function NewerVersion() {
  const hasNewer = useProgram((program) => program.hasNewer);
  const [unsaved, setUnsaved] = useState(false);
  if (!hasNewer) return null;
  return (
    <span className={styles.newer}>
      {unsaved ? 'Not yet: the last edit is still being saved.' : 'A newer version is there.'}
      <Action look="quiet" onPress={() => setUnsaved(!takeNewer())}>
        Take it
      </Action>
    </span>
  );
}
