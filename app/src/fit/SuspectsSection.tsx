import type { RunsFit } from '@footmark/site';
import cards from '../cards/cards.module.css';
import { useSite } from '../session/siteSession';
import { words } from '../words';
import { EvidenceRow } from './EvidenceRow';
import styles from './fit.module.css';

/** As many groups as a person can look into at once; the rest mostly follows from the first. */
const MOST_GROUPS = 3;

/** What disagrees with all the rest: by how much, and what it would have to be. */
export function SuspectsSection({ fit }: { readonly fit: RunsFit }) {
  const site = useSite();
  const groups = fit.blunders.slice(0, MOST_GROUPS);
  if (groups.length === 0) return null;
  return (
    <div className={cards.section}>
      <h3>What does not fit</h3>
      {groups.map((group) => (
        <div key={group.map((s) => s.name).join()} className={styles.suspect}>
          {group.length > 1 ? <p>One of these is wrong. Nothing tells which.</p> : null}
          {group.map((suspect) => (
            <EvidenceRow
              key={suspect.name}
              tag={suspect.tag}
              observation={suspect.name}
              note={`${words.surpriseText(suspect.standardized)}. ${words.blunderText(suspect, site)}`}
            />
          ))}
        </div>
      ))}
      {fit.blunders.length > 1 ? (
        <p className={cards.sub}>Begin with the first: what follows may be wrong only because of it.</p>
      ) : null}
    </div>
  );
}
