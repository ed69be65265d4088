import type { Point } from '@footmark/geometry';
import type { Feature } from '@footmark/site';
import { placesInArea } from './placesInArea';

type Known = { readonly ring: readonly Point[]; readonly places: ReturnType<typeof placesInArea> };

const known = new WeakMap<Feature, Known>();

/** `placesInArea` of a thing's outline, sought anew only when the thing or its outline is another. */
export function nameplacesOf(feature: Feature, ring: readonly Point[]): Known['places'] {
  const last = known.get(feature);
  if (last !== undefined && isSameRing(last.ring, ring)) return last.places;
  const places = placesInArea(ring);
  known.set(feature, { ring, places });
  return places;
}

function isSameRing(a: readonly Point[], b: readonly Point[]): boolean {
  return a.length === b.length && a.every((p, i) => p.x === b[i]?.x && p.y === b[i]?.y);
}
