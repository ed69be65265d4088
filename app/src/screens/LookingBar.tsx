import type { SiteChange } from '@footmark/merge';
import { useEffect, useState } from 'react';
import { momentText } from '../cards/momentText';
import { Action } from '../controls/Action';
import { stopLooking, useLooking } from '../session/looking';
import { bringBackLooked, useSiteSession } from '../session/siteSession';
import styles from './LookingBar.module.css';

/** Says that another version is shown in place of the site, how far it is from it, and leads back, or brings it back. */
export function LookingBar() {
  const { site: looked, title, at } = useLooking();
  const now = useSiteSession((s) => s.site);
  const [changes, setChanges] = useState<readonly SiteChange[] | null>(null);
  useEffect(() => {
    let gone = false;
    setChanges(null);
    if (looked !== null && now !== null)
      void import('@footmark/merge').then(
        ({ changesBetween }) => gone || setChanges(changesBetween(looked, now)),
      );
    return () => {
      gone = true;
    };
  }, [looked, now]);
  if (looked === null) return null;
  return (
    <section className={styles.bar} aria-label="Another version is shown" role="status">
      <p>
        <strong>{title}.</strong> {changes === null || at === null ? '' : sinceText(changes)}
      </p>
      <div className={styles.ways}>
        {at === null ? null : (
          <Action look="primary" onPress={() => bringBackLooked(`Bring back ${momentText(at)}`)}>
            Bring this back
          </Action>
        )}
        <Action onPress={stopLooking}>Back to now</Action>
      </div>
    </section>
  );
}

function sinceText(changes: readonly SiteChange[]): string {
  const added = changes.filter((c) => c.before === undefined).length;
  const gone = changes.filter((c) => c.after === undefined).length;
  const other = changes.length - added - gone;
  const parts = [
    ...(added > 0 ? [`${added} added`] : []),
    ...(other > 0 ? [`${other} changed`] : []),
    ...(gone > 0 ? [`${gone} taken away`] : []),
  ];
  return parts.length === 0 ? 'Nothing has been changed since.' : `Since then: ${parts.join(', ')}.`;
}
