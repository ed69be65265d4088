import type { SaidOfFile } from '@footmark/words';
import { Action } from '../controls/Action';
import styles from './HomeScreen.module.css';

type Props = { readonly said: SaidOfFile; readonly onClose: () => void };

/** Why a file was not opened, where in it the fault is, and what to do. */
export function OpenProblem({ said: { text, cure, problems }, onClose }: Props) {
  return (
    <div className={styles.problem} role="alert">
      <p>
        <strong>{text}</strong> {cure}
      </p>
      {problems.length > 0 ? (
        <ul>
          {problems.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      ) : null}
      <Action onPress={onClose}>Close</Action>
    </div>
  );
}
