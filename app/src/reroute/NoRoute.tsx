import { allowing, isToBeAsked, sidesFor } from '@footmark/reroute';
import type { FoundRoutes } from '@footmark/route';
import type { Said } from '@footmark/words';
import cards from '../cards/cards.module.css';
import { Action } from '../controls/Action';
import { useDerived, useSite } from '../session/siteSession';
import { words } from '../words';
import styles from './reroute.module.css';
import { useAsk } from './useAsk';
import { changeAsk, startLooking } from './waysSession';

/** Why there is no new route, and the smallest changes that open one; nothing where there is one. */
export function NoRoute({ routes }: { readonly routes: FoundRoutes }) {
  const site = useSite();
  const derived = useDerived();
  const ask = useAsk();
  if (routes.is === 'found' || routes.is === 'stopped') return null;
  if (routes.is === 'wrong')
    return (
      <div className={cards.section} role="status">
        <h3>No new route</h3>
        {[...new Set(routes.problems.map((problem) => sentences(words.routeProblemText(problem, site))))].map(
          (text) => (
            <p key={text}>{text}</p>
          ),
        )}
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
          const sides = ask === null ? null : sidesFor(site, derived, ask, relaxation.change);
          const allowed = ask === null ? null : allowing(ask, relaxation.change, site);
          return (
            <li key={text} className={styles.relaxation}>
              <span>
                {text}
                {sides === null ? null : ` ${words.sidesText(sides)}`}
                {isToBeAsked(relaxation.change, site) ? ' Only whoever may allow it can: ask first.' : null}
              </span>
              {allowed === null ? null : (
                <Action
                  onPress={() => {
                    changeAsk(allowed);
                    startLooking();
                  }}
                >
                  Try it
                </Action>
              )}
            </li>
          );
        })}
      </ul>
    </div>
  );
}

/** Said once, though it is so at every piece of a pipe. */
function sentences({ text, cure }: Said): string {
  return `${text} ${cure}`.trim();
}
