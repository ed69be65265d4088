import type { OpenFailure } from '@footmark/site';
import { Action } from '../controls/Action';
import { words } from '../words';
import styles from './HomeScreen.module.css';

type Props = { readonly failure: OpenFailure; readonly onClose: () => void };

/** Why a file was not opened, where in it the fault is, and what to do. */
export function OpenProblem({ failure, onClose }: Props) {
  const { text, cure, problems } = words.fileProblemText(failure);
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
