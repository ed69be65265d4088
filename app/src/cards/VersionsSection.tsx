import { useEffect, useState } from 'react';
import { Button } from 'react-aria-components';
import { useSaveState } from '../session/autosave';
import { lookAt, useLooking } from '../session/looking';
import { readyToDerive } from '../session/readyToDerive';
import { useSiteSession } from '../session/siteSession';
import { notify } from '../session/workbench';
import { listVersions, loadVersion, type VersionKey } from '../storage/versionStore';
import styles from './cards.module.css';
import { momentText } from './momentText';

/** How the site was before: versions that the device has put by, the last first. A press shows one in place of the site. */
export function VersionsSection() {
  const id = useSiteSession((s) => s.site?.id);
  const looked = useLooking();
  // a write may have put one by
  const written = useSaveState((s) => s.waiting);
  const [versions, setVersions] = useState<readonly VersionKey[]>([]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: read anew after each write
  useEffect(() => {
    let gone = false;
    if (id !== undefined)
      listVersions(id).then(
        (list) => gone || setVersions(list),
        () => gone || setVersions([]),
      );
    return () => {
      gone = true;
    };
  }, [id, written]);
  const look = async (version: VersionKey) => {
    try {
      const opened = id === undefined ? null : await loadVersion(id, version);
      if (!opened?.ok) throw new Error('it does not open');
      await readyToDerive(opened.site);
      lookAt(opened.site, `As it was on ${momentText(version.at)}`, version.at);
    } catch {
      notify('That version cannot be read any more.');
    }
  };
  return (
    <div className={styles.section}>
      <h3>How it was before</h3>
      {versions.length === 0 ? (
        <p className={styles.empty}>
          None yet. While you work the device puts a version by every ten minutes, and the first when you come
          back to a site.
        </p>
      ) : (
        <ol className={styles.rows}>
          {versions.map((version) => (
            <li key={version.seq}>
              <Button
                className={styles.row ?? ''}
                aria-current={looked.site !== null && looked.at === version.at}
                onPress={() => void look(version)}
              >
                <span className={styles.grow}>{momentText(version.at)}</span>
              </Button>
            </li>
          ))}
        </ol>
      )}
    </div>
  );
}
