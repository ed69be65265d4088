import type { OtherVersion, SiteState } from '@footmark/merge';
import { type Site, sameValue } from '@footmark/site';
import { readSite } from '../storage/siteStore';
import { otherVersionsOf, setOtherVersions } from './otherVersions';
import { readyToDerive } from './readyToDerive';
import { replaceInSession, useSiteSession } from './siteSession';

/** A site as this tab last knew the device to have it. */
export type KnownOnDevice = {
  readonly seq: number;
  readonly site: Site;
  readonly others: readonly OtherVersion[];
};

/** What the device has of a site now, and what this tab is to have of it; `settled`: they are the same. */
export type Met = {
  readonly known: KnownOnDevice;
  readonly site: Site;
  readonly settled: boolean;
};

/**
 * Another tab, or the team's exchange, has written the site since this tab last saw it: both become one, in the open site with its steps
 * of undo, too. `left` gives the state that is not written yet of a site that is not open; what is put into the session is done `quietly`. Null when the device has the site no more.
 */
export async function meetDevice(
  id: string,
  base: KnownOnDevice | undefined,
  left: () => Site | undefined,
  quietly: (change: () => void) => void,
): Promise<Met | null> {
  const [found, { changesBetween, mergeSites, mergeStates }] = await Promise.all([
    readSite(id),
    import('@footmark/merge'),
  ]);
  if (found === null) return null;
  if (!found.opened.ok) throw new Error('the site on the device does not open');
  await readyToDerive(found.opened.site);
  const known: KnownOnDevice = { seq: found.seq, site: found.opened.site, others: found.others };
  const open = useSiteSession.getState().site;
  const mine = open?.id === id ? open : left();
  if (mine === undefined) return { known, site: known.site, settled: true };
  const made = mergeStates(
    base === undefined ? null : stateOf(base),
    stateOf({ site: mine, others: otherVersionsOf(id) }),
    stateOf(known),
  );
  const settled = changesBetween(made.site, known.site).length === 0 && sameValue(made.others, known.others);
  const site = settled ? known.site : made.site;
  quietly(() => {
    setOtherVersions(id, settled ? known.others : made.others);
    if (open?.id === id)
      replaceInSession(site, (past) => mergeSites(base?.site ?? null, past, known.site).site);
  });
  return { known, site, settled };
}

function stateOf({ site, others }: Pick<SiteState, 'site' | 'others'>): SiteState {
  return { site, others, binnedAt: null };
}
