import type { Point } from '@footmark/geometry';
import Flatbush from 'flatbush';
import { refKey } from '../document/pointOwners';
import type { Site } from '../document/site';
import type { Ref } from '../document/spot';
import { type Anchor, datumOf } from './anchor';
import type { DerivedFeature } from './deriveFeatures';
import { faceRadiusOf } from './faceRadius';
import type { ResolvedPoint } from './resolvePoints';

/** A point on the ground that can be found again and taped from. */
export type ReferencePoint = {
  readonly ref: Ref;
  readonly key: string;
  readonly at: Point;
  /** It hangs on what the pipes hang on (the site's datum), so that a tape from it leads to a mark; and where the tape ends is known. */
  readonly measured: boolean;
  /** The corner's letter where the feature has several points, null where it is the one. */
  readonly corner: string | null;
  /** Of a round thing that is taped to its near face (m), 0 for a point that is taped to itself. */
  readonly faceRadius: number;
};

/** Reference points by place. */
export type ReferenceIndex = {
  readonly all: readonly ReferencePoint[];
  /** The points within `reach` (m), nearest first. */
  readonly nearestFirst: (from: Point, reach: number) => Iterable<ReferencePoint>;
};

/** How many points are looked up at first: mostly enough. */
const FIRST_LOOK = 20;

/** Every point of every feature whose kind serves as a reference; a point that is `at` another is that other. */
export function referenceIndex(
  site: Site,
  features: ReadonlyMap<string, DerivedFeature>,
  places: ReadonlyMap<string, ResolvedPoint>,
): ReferenceIndex {
  const all = referencePoints(datumOf(site.paths, places), features, places);
  if (all.length === 0) return { all, nearestFirst: () => [] };
  const boxes = new Flatbush(all.length);
  for (const { at } of all) boxes.add(at.x, at.y, at.x, at.y);
  boxes.finish();
  return {
    all,
    *nearestFirst(from, reach) {
      for (let given = 0, look = FIRST_LOOK; ; look *= 4) {
        const found = boxes.neighbors(from.x, from.y, look, reach);
        for (const i of found.slice(given)) {
          const reference = all[i];
          if (reference !== undefined) yield reference;
        }
        if (found.length < look) return;
        given = found.length;
      }
    },
  };
}

function referencePoints(
  datum: Anchor | undefined,
  features: ReadonlyMap<string, DerivedFeature>,
  places: ReadonlyMap<string, ResolvedPoint>,
): readonly ReferencePoint[] {
  const found: ReferencePoint[] = [];
  const taken = new Set<string>();
  for (const { feature, spec } of features.values()) {
    if (!spec.reference) continue;
    const faceRadius = faceRadiusOf(feature);
    for (const v of feature.vertices) {
      const ref = { of: feature.id, at: v.id };
      const key = refKey(ref);
      const place = places.get(key);
      if (place === undefined || taken.has(place.is)) continue;
      taken.add(place.is);
      found.push({
        ref,
        key,
        at: place.at,
        // without a size it is not known where the tape ends
        measured: place.anchor === datum && (spec.tapedTo !== 'face' || faceRadius > 0),
        corner: feature.vertices.length > 1 ? v.id.toUpperCase() : null,
        faceRadius,
      });
    }
  }
  return found;
}
