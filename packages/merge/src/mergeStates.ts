import type { Site } from '@footmark/site';
import type { OtherVersion } from './mergeParts';
import { distinctVersions, mergeSites } from './mergeSites';
import { canonicalText } from './sameValue';

/** A site as devices keep and exchange it: the versions that wait for a choice, and since when (ms since 1970) it is in the bin. */
export type SiteState = {
  readonly site: Site;
  readonly others: readonly OtherVersion[];
  readonly binnedAt: number | null;
};

/** Merges two states of one site. A version that either side has chosen about is gone; one that either has come to know of stays. */
export function mergeStates(base: SiteState | null, mine: SiteState, theirs: SiteState): SiteState {
  const { site, others } = mergeSites(base?.site ?? null, mine.site, theirs.site);
  return {
    site,
    others: distinctVersions(site, [
      ...mergeVersions(base?.others ?? [], mine.others, theirs.others),
      ...others,
    ]),
    binnedAt: mergeBinned(base?.binnedAt ?? null, mine.binnedAt, theirs.binnedAt),
  };
}

function mergeVersions(
  base: readonly OtherVersion[],
  mine: readonly OtherVersion[],
  theirs: readonly OtherVersion[],
): readonly OtherVersion[] {
  const texts = (list: readonly OtherVersion[]) => new Set(list.map(canonicalText));
  const [inBase, inMine, inTheirs] = [texts(base), texts(mine), texts(theirs)];
  return [...mine, ...theirs].filter((version) => {
    const text = canonicalText(version);
    return inBase.has(text) ? inMine.has(text) && inTheirs.has(text) : true;
  });
}

/** Put into the bin on both sides: since the earlier time. */
function mergeBinned(base: number | null, mine: number | null, theirs: number | null): number | null {
  if (mine === theirs || theirs === base) return mine;
  if (mine === base) return theirs;
  return mine === null || theirs === null ? (mine ?? theirs) : Math.min(mine, theirs);
}
