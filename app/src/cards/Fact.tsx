import type { ReactNode } from 'react';
import styles from './cards.module.css';

type Props = { readonly name: string; readonly note?: string | undefined; readonly children: ReactNode };

/** One row of a list of facts: what it is, and what it comes to. */
export function Fact({ name, note, children }: Props) {
  return (
    <div className={styles.factRow}>
      <dt>{name}</dt>
      <dd>
        {children}
        {note ? <small>{note}</small> : null}
      </dd>
    </div>
  );
}
