import { isToBeAsked, mustStand } from '@footmark/reroute';
import type { FoundRoutes, Relaxation } from '@footmark/route';
import type { Site } from '@footmark/site';
import cards from '../cards/cards.module.css';
import { Action } from '../controls/Action';
import { useSite } from '../session/siteSession';
import { words } from '../words';
import styles from './reroute.module.css';
import { changeAsk, startLooking, treat } from './waysSession';

/** Why there is no new route, and the smallest changes that open one; nothing where there is one. */
export function NoRoute({ routes }: { readonly routes: FoundRoutes }) {
  const site = useSite();
  if (routes.is === 'found' || routes.is === 'stopped') return null;
  if (routes.is === 'wrong')
    return (
      <div className={cards.section} role="status">
        <h3>No new route</h3>
        {routes.problems.map((problem) => {
          const { text, cure } = words.routeProblemText(problem, site);
          return (
            <p key={text}>
              {text} {cure}
            </p>
          );
        })}
      </div>
    );
  return (
    <div className={cards.section} role="status">
      <h3>No new route</h3>
      {routes.gaveUp ? <p>There may be one all the same: not everywhere was looked.</p> : null}
      {routes.because.map((blocked) => {
        const text = words.blockedText(blocked, site);
        return <p key={text}>{text}</p>;
      })}
      {routes.relaxations.length === 0 ? null : <h3>What would open a way</h3>}
      <ul className={cards.rows}>
        {routes.relaxations.map((relaxation) => {
          const text = words.relaxationText(relaxation, site);
          const allow = allowing(relaxation, site);
          return (
            <li key={text} className={styles.relaxation}>
              <span>
                {text}
                {isToBeAsked(relaxation.change, site) ? ' Only whoever may allow it can: ask first.' : null}
              </span>
              {allow === null ? null : <Action onPress={allow}>Try it</Action>}
            </li>
          );
        })}
      </ul>
    </div>
  );
}

/** Asks again with a requirement less; null for what only a rule can change, and for what must not be gone through. */
function allowing({ change }: Relaxation, site: Site): (() => void) | null {
  const again = (how: () => void) => () => {
    how();
    startLooking();
  };
  switch (change.is) {
    case 'less-clearance':
      return again(() => treat(change.obstacle, { as: 'clear', clearance: change.to }));
    case 'through':
      return mustStand(change.obstacle, site) ? null : again(() => treat(change.obstacle, { as: 'free' }));
    case 'less-fall':
      return again(() => changeAsk({ keepsGrade: false }));
    case 'any-heading':
    case 'more-bends':
    case 'no-straight':
      return null;
  }
}
