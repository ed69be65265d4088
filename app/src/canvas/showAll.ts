import { boundsOf } from '@footmark/drawing';
import { pointOwners, refKey } from '@footmark/site';
import { boundsToShow } from '../pictures/boundsToShow';
import { chosenIds } from '../session/selection';
import { currentSite, derivedFrom } from '../session/siteSession';
import { drawingOf } from './planScene';
import { fitView } from './planView';

/** Fits the whole drawing into the view. */
export function showAll(): void {
  const site = currentSite();
  const derived = derivedFrom(site);
  fitView(boundsToShow(drawingOf(site, derived, null, new Set()), site, derived));
}

/** Fits what is chosen into the view; the whole drawing when nothing is. */
export function showChosen(): void {
  const site = currentSite();
  const ids = chosenIds();
  const { points } = derivedFrom(site);
  const places = pointOwners(site)
    .filter((owner) => ids.includes(owner.id))
    .flatMap((owner) =>
      owner.vertices.flatMap((v) => points.get(refKey({ of: owner.id, at: v.id }))?.at ?? []),
    );
  if (places.length === 0) showAll();
  else fitView(boundsOf(places));
}
