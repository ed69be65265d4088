import { pointOwners } from '@footmark/site';
import { X } from 'lucide-react';
import { Action } from '../controls/Action';
import { useSite } from '../session/siteSession';
import { select } from '../session/workbench';
import { words } from '../words';
import styles from './cards.module.css';
import { ThingActions } from './ThingActions';
import { targetOf } from './targetOf';

/** Several things in hand at once. */
export function GroupCard({ ids }: { readonly ids: readonly string[] }) {
  const site = useSite();
  const owners = pointOwners(site).filter((o) => ids.includes(o.id));
  return (
    <section className={styles.card} aria-label={`${owners.length} things`}>
      <div className={styles.head}>
        <h2>{owners.length} things</h2>
        <Action look="quiet" onPress={() => select(null)}>
          <X size={20} aria-hidden /> Let go
        </Action>
      </div>
      <p className={styles.empty}>{owners.map((o) => words.targetName(targetOf(o), site)).join(', ')}</p>
      <ThingActions owners={owners} />
    </section>
  );
}
