import { isPath, pointOwners, type Site, type Target } from '@footmark/site';
import { currentSite } from './siteSession';
import { selectGroup, useWorkbench } from './workbench';

/** Ids of the features and paths in hand: the group, or the one that is selected. */
export function chosenIds(): readonly string[] {
  const { group, selected } = useWorkbench.getState();
  if (group.length > 0) return group;
  return selected?.kind === 'feature' || selected?.kind === 'path' ? [selected.id] : [];
}

/** Adds a thing to what is in hand, or takes it out when it is there. */
export function toggleChosen(target: Target): void {
  if (target.kind !== 'feature' && target.kind !== 'path') return;
  const before = chosenIds();
  const ids = before.includes(target.id) ? before.filter((id) => id !== target.id) : [...before, target.id];
  selectGroup(targetsOf(currentSite(), ids));
}

/** Targets of the things of these ids, in the order of the site. */
export function targetsOf(site: Site, ids: readonly string[]): readonly Target[] {
  return pointOwners(site)
    .filter((owner) => ids.includes(owner.id))
    .map((owner) => ({ kind: isPath(owner) ? 'path' : 'feature', id: owner.id }));
}
