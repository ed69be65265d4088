import type { Danger } from '@footmark/dig';
import { useState } from 'react';
import { Action } from '../controls/Action';
import { useSite } from '../session/siteSession';
import { words } from '../words';
import styles from './stop.module.css';

/** Listed at first: there is no room for more without scrolling, and services come first. */
const FIRST = 2;

/** What not to hit, what is worst first. */
export function DangerList({ dangers }: { readonly dangers: readonly Danger[] }) {
  const site = useSite();
  const [all, setAll] = useState(false);
  const { crew } = words;
  // what can kill is never folded away
  const services = dangers.filter((d) => d.is === 'service').length;
  const shown = all ? dangers : dangers.slice(0, Math.max(FIRST, services));
  return (
    <section className={styles.dangers} aria-label={crew.label('do-not-hit')}>
      <h3>{crew.label('do-not-hit')}</h3>
      {dangers.length === 0 ? <p>{crew.label('nothing-known')}</p> : null}
      {shown.map((danger) => (
        <p key={`${danger.is}/${danger.feature}`} data-is={danger.is}>
          {crew.dangerText(danger, site)}
        </p>
      ))}
      {dangers.length > shown.length ? (
        <Action look="quiet" onPress={() => setAll(true)}>
          {crew.label('more')} ({dangers.length - shown.length})
        </Action>
      ) : null}
    </section>
  );
}
