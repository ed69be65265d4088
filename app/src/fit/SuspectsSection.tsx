import type { BlunderGroup, RunsFit } from '@footmark/site';
import cards from '../cards/cards.module.css';
import { Fold } from '../cards/Fold';
import { useSite } from '../session/siteSession';
import { words } from '../words';
import { EvidenceRow } from './EvidenceRow';
import styles from './fit.module.css';

/** As many groups as a person can look into at once. */
const MOST_GROUPS = 5;

/** What disagrees with all the rest: by how much, and what it would have to be. */
export function SuspectsSection({ fit }: { readonly fit: RunsFit }) {
  const [first, ...others] = fit.blunders.slice(0, MOST_GROUPS);
  if (first === undefined) return null;
  return (
    <div className={cards.section}>
      <h3>What does not fit</h3>
      <SuspectGroup group={first} />
      {others.length === 0 ? null : (
        <Fold title="What else does not fit">
          <p className={cards.sub}>Begin with the first: these may be wrong only because of it.</p>
          {others.map((group) => (
            <SuspectGroup key={group.map((s) => s.name).join()} group={group} />
          ))}
        </Fold>
      )}
    </div>
  );
}

function SuspectGroup({ group }: { readonly group: BlunderGroup }) {
  const site = useSite();
  return (
    <div className={styles.suspect}>
      {group.length > 1 ? <p>One of these is wrong. Nothing tells which.</p> : null}
      {group.map((suspect) => (
        <EvidenceRow
          key={suspect.name}
          tag={suspect.tag}
          observation={suspect.name}
          note={`Off by ${words.surpriseText(suspect.standardized)}. ${words.blunderText(suspect, site)}`}
          isLong
        />
      ))}
    </div>
  );
}
