import { useEffect } from 'react';
import { Action } from '../controls/Action';
import { saveSiteFile } from '../handOff/saveSiteFile';
import { lookIfKept, useKept } from '../session/persistence';
import type { SiteEntry } from '../storage/records';
import { loadSite, markDownloaded } from '../storage/siteStore';
import styles from './HomeScreen.module.css';

/** A browser asks, or stops, when a page hands out more files than this at once. */
const MOST_AT_ONCE = 10;

type Props = { readonly entries: readonly SiteEntry[]; readonly onDownloaded: () => void };

/** Whether the browser keeps what is on this device for good, and where it does not, what to take out as files. */
export function KeptLine({ entries, onDownloaded }: Props) {
  const { kept } = useKept();
  useEffect(() => {
    void lookIfKept();
  }, []);
  if (entries.length === 0 || kept === 'unknown') return null;
  if (kept === 'promised')
    return <p className={styles.empty}>This browser keeps these sites until you delete them.</p>;
  const lacking = entries.filter((e) => e.team !== true && e.downloadedSeq !== (e.seq ?? 0));
  const next = lacking.slice(0, MOST_AT_ONCE);
  const download = async () => {
    for (const { id } of next) {
      const opened = await loadSite(id);
      if (!opened?.ok) continue;
      saveSiteFile(opened.site);
      await markDownloaded(id);
    }
    onDownloaded();
  };
  return (
    <div className={styles.kept}>
      <p>
        This browser has not promised to keep its sites: it may clear them when the device runs short of room.{' '}
        {lacking.length === 0
          ? 'All of them have been downloaded as they are now.'
          : `${lacking.length === 1 ? 'One site is' : `${lacking.length} sites are`} in no downloaded file as ${lacking.length === 1 ? 'it is' : 'they are'} now.`}
      </p>
      {next.length === 0 ? null : (
        <Action onPress={() => void download()}>
          {next.length === 1
            ? 'Download it'
            : next.length === lacking.length
              ? 'Download them'
              : `Download the last ${next.length}`}
        </Action>
      )}
    </div>
  );
}
