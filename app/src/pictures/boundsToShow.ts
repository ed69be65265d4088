import { boundsOf, type Drawing } from '@footmark/drawing';
import type { Derived, Site } from '@footmark/site';
import { cornersOf } from './picturePlace';

/** The part of the plan that shows all of a site: what is drawn, or the pictures while nothing is. Null for an empty site. */
export function boundsToShow(drawing: Drawing, site: Site, derived: Derived): Drawing['bounds'] {
  if (drawing.bounds !== null) return drawing.bounds;
  const corners = site.underlays.flatMap((underlay) => {
    const place = derived.underlays.get(underlay.id);
    return underlay.shown && place !== undefined ? cornersOf(place, underlay) : [];
  });
  return boundsOf(corners);
}
