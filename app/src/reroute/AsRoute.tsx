import { checkPath } from '@footmark/reroute';
import { letters, type Path } from '@footmark/site';
import { useMemo } from 'react';
import cards from '../cards/cards.module.css';
import { Action } from '../controls/Action';
import { useDerived, useSite } from '../session/siteSession';
import { goTo, toggleLeaf } from '../session/workbench';
import { words } from '../words';
import styles from './reroute.module.css';
import { askAbout, startLooking } from './waysSession';

/** Whether a planned pipe can be laid as it is drawn; judged anew with every move. */
export function AsRoute({ path }: { readonly path: Path }) {
  const site = useSite();
  const derived = useDerived();
  const faults = useMemo(() => checkPath(site, derived, path.id), [site, derived, path.id]);
  if (faults === null) return null;
  const names = path.vertices.map((_, i) => letters(i));
  return (
    <div className={cards.section}>
      <h3>Can it be laid so?</h3>
      {faults.length === 0 ? (
        <p>Yes: standard bends, room for their fittings, clear of what it must keep clear of.</p>
      ) : (
        <ul className={styles.list}>
          {faults.map((fault) => {
            const { text, cure } = words.routeFaultText(fault, names, site);
            return (
              <li key={text} className={styles.fault}>
                <b>{text}</b> {cure}
              </li>
            );
          })}
        </ul>
      )}
      <Action
        onPress={() => {
          askAbout(site, { path: path.id, from: 0, to: null, leaves: 'along' });
          goTo('route');
          toggleLeaf('reroute');
          startLooking();
        }}
      >
        Improve it
      </Action>
    </div>
  );
}
