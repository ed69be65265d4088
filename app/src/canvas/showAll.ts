import { boundsOf } from '@footmark/drawing';
import type { Point } from '@footmark/geometry';
import { pointOwners, refKey } from '@footmark/site';
import { boundsToShow } from '../pictures/boundsToShow';
import { chosenIds } from '../session/selection';
import { currentSite, derivedFrom } from '../session/siteSession';
import { drawingOf } from './planScene';
import { fitView, frameView } from './planView';

/** Fits the whole drawing into the view. */
export function showAll(): void {
  const site = currentSite();
  const derived = derivedFrom(site);
  fitView(boundsToShow(drawingOf(site, derived, null, null, new Set()), site, derived));
}

/** Fits what is chosen into the view; the whole drawing when nothing is. */
export function showChosen(): void {
  const places = placesOfChosen();
  if (places.length === 0) showAll();
  else fitView(boundsOf(places));
}

function placesOfChosen(): readonly Point[] {
  const site = currentSite();
  const ids = chosenIds();
  const { points } = derivedFrom(site);
  return pointOwners(site)
    .filter((owner) => ids.includes(owner.id))
    .flatMap((owner) =>
      owner.vertices.flatMap((v) => points.get(refKey({ of: owner.id, at: v.id }))?.at ?? []),
    );
}

/** Shows what is chosen with as much room about it as it takes itself, when it does not lie well in the view. */
export function showWithRoom(): void {
  const box = boundsOf(placesOfChosen());
  if (box === null) return;
  const room = { x: (box.maxX - box.minX) / 2, y: (box.maxY - box.minY) / 2 };
  frameView({
    minX: box.minX - room.x,
    maxX: box.maxX + room.x,
    minY: box.minY - room.y,
    maxY: box.maxY + room.y,
  });
}
