import { AT_ITS_END, checkPath, type RerouteAsk } from '@footmark/reroute';
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
  const check = useMemo(() => checkPath(site, derived, path.id), [site, derived, path.id]);
  if (check === null) return null;
  const { faults, fallJudged } = check;
  const names = path.vertices.map((_, i) => letters(i));
  return (
    <div className={cards.section}>
      <h3>Can it be laid so?</h3>
      {faults.length === 0 ? (
        <p>Its bends fit and it keeps its clearances.</p>
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
      {fallJudged ? null : <p>Its fall was not judged: the levels at its two ends are not both known.</p>}
      <p>Services, trench and roots: see what stands in the way.</p>
      <Action onPress={() => goTo('route')}>What stands in the way</Action>
      <Action
        onPress={() => {
          askAbout(site, {
            path: path.id,
            from: 0,
            to: AT_ITS_END,
            leaves: 'along',
            otherwise: {},
            ...diameterOf(path),
          });
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

function diameterOf({ stretches: [first] }: Path): Partial<Pick<RerouteAsk, 'diameter'>> {
  return first === undefined ? {} : { diameter: first.diameter };
}
