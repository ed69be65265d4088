import { useCallback, useEffect, useState } from 'react';
import type { SiteEntry } from '../storage/records';
import { onSiteNews } from '../storage/siteNews';
import { listSites, readEntries } from '../storage/siteStore';
import { sitesCleared } from './sitesCleared';

/** What others write comes in bursts, and is looked at this often at most (ms). */
const REFRESH_MS = 300;

const SAID = {
  cleared:
    'The sites that were on this device are gone: the browser has cleared what it stored. Open them again from the files that you downloaded, or from the team.',
  blocked:
    'This browser keeps no sites: its storage is blocked or full. You can work, and must download the file before you close the tab.',
} as const;

type Listed = {
  /** Last saved first; null: not read yet. */
  readonly entries: readonly SiteEntry[] | null;
  readonly bin: readonly SiteEntry[];
  /** What is the matter with the device's storage; null: nothing. */
  readonly said: string | null;
};

const NOT_YET: Listed = { entries: null, bin: [], said: null };

/** The sites on this device and those in its bin, as they are: what other tabs and the team write is taken in. */
export function useSiteEntries(): Listed & { readonly refresh: () => void } {
  const [listed, setListed] = useState(NOT_YET);
  const refresh = useCallback(() => {
    listSites(Date.now()).then(
      ({ sites, bin, purged }) => {
        const cleared = sitesCleared(sites.length + bin.length, purged);
        setListed({ entries: sites, bin, said: cleared ? SAID.cleared : null });
      },
      () => setListed({ entries: [], bin: [], said: SAID.blocked }),
    );
  }, []);
  useEffect(() => {
    refresh();
    const changed = new Set<string>();
    let coming: number | undefined;
    const look = async () => {
      coming = undefined;
      const ids = [...changed];
      changed.clear();
      const found = await readEntries(ids).catch(() => null);
      if (found !== null) setListed((now) => withEntries(now, found));
    };
    const stop = onSiteNews(({ id }) => {
      changed.add(id);
      coming ??= window.setTimeout(look, REFRESH_MS);
    });
    return () => {
      stop();
      window.clearTimeout(coming);
    };
  }, [refresh]);
  return { ...listed, refresh };
}

/** The list with some of its lines anew; the others are the same objects as before. */
function withEntries(listed: Listed, found: ReadonlyMap<string, SiteEntry | null>): Listed {
  if (listed.entries === null) return listed;
  const fresh = [...found.values()].filter((entry) => entry !== null);
  const isOld = ({ id }: SiteEntry) => !found.has(id);
  const isBinned = ({ deletedAt }: SiteEntry) => deletedAt !== undefined;
  const inOrder = (entries: readonly SiteEntry[]) => entries.toSorted((a, b) => b.savedAt - a.savedAt);
  return {
    ...listed,
    entries: inOrder([...listed.entries.filter(isOld), ...fresh.filter((entry) => !isBinned(entry))]),
    bin: inOrder([...listed.bin.filter(isOld), ...fresh.filter(isBinned)]),
  };
}
