import type { NothingAsked, Way } from '@footmark/reroute';
import { X } from 'lucide-react';
import { ProgressBar } from 'react-aria-components';
import cards from '../cards/cards.module.css';
import { Fold } from '../cards/Fold';
import { Action } from '../controls/Action';
import { DigCautions } from '../dig/DigCautions';
import { useSite } from '../session/siteSession';
import { words } from '../words';
import { AskFields } from './AskFields';
import { MindedFold } from './MindedFold';
import { NoRoute } from './NoRoute';
import { PricesFold } from './PricesFold';
import { usePrices } from './prices';
import styles from './reroute.module.css';
import { rowsOf } from './rowsOf';
import { takeWay } from './takeWay';
import { useAsk } from './useAsk';
import { WayList } from './WayList';
import { WayTable } from './WayTable';
import { askedNow, shownWays, startLooking, stopLooking, useWays } from './waysSession';

/** Ways in which the drain could be made good: new routes around what stands in the way, beside mending the old pipe. */
export function RerouteCard({ onClose }: { readonly onClose: () => void }) {
  const site = useSite();
  const ask = useAsk();
  const session = useWays();
  const ways = shownWays(session, site);
  const way = ways.find((w) => w.id === session.chosen);
  return (
    <section className={cards.card} aria-label="Another way">
      <div className={cards.head}>
        <h2>Another way</h2>
        <Action look="icon" aria-label="Close" onPress={onClose}>
          <X size={22} aria-hidden />
        </Action>
      </div>
      {ask === null ? (
        <p className={cards.empty}>Draw the pipe first: a new one takes its place.</p>
      ) : (
        <>
          {/* once there are ways, they come before what was asked for */}
          <Fold key={String(ways.length > 0)} title="What is asked for" isOpen={ways.length === 0}>
            <AskFields ask={ask} />
          </Fold>
          <MindedFold ask={ask} />
          <PricesFold />
          <Looking again={ways.length > 0} />
          <State />
          {ways.length > 0 ? <WayList ways={ways} chosen={session.chosen} /> : null}
          {way === undefined ? null : <ChosenWay way={way} />}
          {ways.length > 1 ? (
            <Fold title="Side by side">
              <WayTable ways={ways} chosen={session.chosen} />
            </Fold>
          ) : null}
          <DigCautions />
        </>
      )}
    </section>
  );
}

/** The button that looks, and how far it is. `again`: there are ways, and taking one of them comes first. */
function Looking({ again }: { readonly again: boolean }) {
  const { progress } = useWays();
  if (progress === null)
    return again ? (
      <Action wide onPress={startLooking}>
        Find ways again
      </Action>
    ) : (
      <div className={styles.stays}>
        <Action look="primary" wide onPress={startLooking}>
          Find ways
        </Action>
      </div>
    );
  return (
    <div className={styles.looking}>
      <ProgressBar className={styles.progress ?? ''} value={100 * progress} aria-label="Looking for ways">
        {({ percentage }) => (
          <>
            <span>Looking for ways</span>
            <span className={styles.bar}>
              <span style={{ width: `${percentage ?? 0}%` }} />
            </span>
          </>
        )}
      </ProgressBar>
      <Action onPress={stopLooking}>Stop</Action>
    </div>
  );
}

const NOTHING: Record<NothingAsked, string> = {
  'no-line':
    'There is no new pipe to look for: the pipe that it is to take the place of has no line yet. Draw that first.',
  'nothing-between':
    'There is no new pipe to look for: the two stations leave nothing of the old one to replace. Give them further apart, upstream first.',
  'no-end': 'What it should arrive at is not there. Choose again where it arrives.',
};

/** What is to be said of the answer as a whole. */
function State() {
  const site = useSite();
  const session = useWays();
  const { found } = session;
  if (found === null) return null;
  if (found.is === 'failed')
    return <p className={cards.empty}>That broke down. The old pipe stays as it is.</p>;
  const asked = askedNow(session, site);
  return (
    <>
      {asked === null ? (
        <p className={cards.empty}>The site or what is asked for has changed since.</p>
      ) : null}
      {found.is === 'nothing' ? <p role="status">{NOTHING[found.why]}</p> : <NoRoute routes={found.routes} />}
    </>
  );
}

function ChosenWay({ way }: { readonly way: Way }) {
  const site = useSite();
  const asked = askedNow(useWays(), site);
  const prices = usePrices();
  return (
    <div className={cards.section}>
      <h3>{words.wayName(way.is)}</h3>
      <dl className={styles.facts}>
        {rowsOf(way, site, prices).map(({ name, text }) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{text}</dd>
          </div>
        ))}
      </dl>
      <Fold title="How near it comes" result={String(way.facts.nearest.length)}>
        <ul className={styles.list}>
          {way.facts.nearest.map((near) => (
            <li key={near.feature} className={styles.fault}>
              <b>{words.targetName({ kind: 'feature', id: near.feature }, site)}</b>{' '}
              {words.obstacleText(near, site)}
            </li>
          ))}
        </ul>
      </Fold>
      <InItsWay findings={way.facts.findings} />
      {way.bored.length === 0 ? null : <BoredCaution />}
      {asked === null ? null : (
        <div className={styles.stays}>
          <Action look="primary" wide onPress={() => takeWay(way, asked.path)}>
            {way.route === null ? 'Plan what is dug for it' : 'Take this way'}
          </Action>
        </div>
      )}
    </div>
  );
}

/** What stands in a way: what must be settled before the rest, as it comes. */
function InItsWay({ findings }: { readonly findings: Way['facts']['findings'] }) {
  const site = useSite();
  const musts = findings.filter((f) => f.severity === 'must').length;
  if (findings.length === 0) return null;
  return (
    <Fold
      title="What stands in its way"
      result={musts === 0 ? String(findings.length) : `${musts} of ${findings.length} must be settled`}
    >
      <ul className={cards.rows}>
        {findings.map((finding, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: findings have no ids, and the list is made anew as a whole
          <li key={i}>
            {finding.severity === 'must' ? (
              <b>{words.digFindingTitle(finding, site)}</b>
            ) : (
              words.digFindingTitle(finding, site)
            )}
          </li>
        ))}
      </ul>
    </Fold>
  );
}

/** What is pulled or bored passes services that nobody sees. */
function BoredCaution() {
  const { title, text } = words.cautionText('bored');
  return (
    <aside className={cards.caution} aria-label={title}>
      <strong>{title}</strong> {text}
    </aside>
  );
}
