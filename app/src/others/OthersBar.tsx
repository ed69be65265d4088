import { Action } from '../controls/Action';
import styles from '../screens/LookingBar.module.css';
import { useOthersOf } from '../session/otherVersions';
import { useSiteSession } from '../session/siteSession';
import { toggleLeaf, useWorkbench } from '../session/workbench';

/** Says that things were changed by two people otherwise, and leads to where one chooses. Nothing while there are none. */
export function OthersBar() {
  const id = useSiteSession((s) => s.site?.id ?? '');
  const count = useOthersOf(id).length;
  const open = useWorkbench((w) => w.leaf === 'others');
  if (count === 0 || open) return null;
  return (
    <section className={styles.bar} aria-label="Changed by two people">
      <p>
        <strong>
          {count === 1
            ? 'One thing was changed otherwise by somebody else.'
            : `${count} things were changed otherwise by somebody else.`}
        </strong>{' '}
        Both versions are kept until somebody chooses.
      </p>
      <div className={styles.ways}>
        <Action look="primary" onPress={() => toggleLeaf('others')}>
          Look at both
        </Action>
      </div>
    </section>
  );
}
