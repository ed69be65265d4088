import { useEffect, useReducer, useRef, useState } from 'react';
import { Action } from '../controls/Action';
import type { Placed } from './part';
import styles from './Shown.module.css';

/** Shows a part as soon as its code is here, and until then what it showed before. */
export function Shown({ of }: { readonly of: Placed }) {
  const [, hear] = useReducer((n: number) => n + 1, 0);
  const [failed, setFailed] = useState<Placed['bring'] | null>(null);
  const last = useRef<Placed | null>(null);
  const isHere = of.element() !== null;
  if (isHere) last.current = of;
  const { bring } = of;
  useEffect(() => {
    if (isHere) return;
    let left = false;
    bring().then(
      () => left || hear(),
      () => left || setFailed(() => bring),
    );
    return () => {
      left = true;
    };
  }, [bring, isHere]);

  if (!isHere && failed === bring) {
    const again = () => {
      setFailed(null);
      bring().then(hear, () => setFailed(() => bring));
    };
    return (
      <div className={styles.missing} role="alert">
        <p>This part of the program did not come. Without a network it has to be on this device already.</p>
        <Action onPress={again}>Try again</Action>
      </div>
    );
  }
  return last.current?.element() ?? null;
}
