import type { Point } from '@footmark/geometry';
import Flatbush from 'flatbush';
import { refKey } from '../document/pointOwners';
import type { Ref } from '../document/spot';
import type { DerivedFeature } from './deriveFeatures';
import { faceRadiusOf } from './faceRadius';

/** A point on the ground that can be found again and taped from. */
export type ReferencePoint = {
  readonly ref: Ref;
  readonly key: string;
  readonly at: Point;
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
export function referenceIndex(features: ReadonlyMap<string, DerivedFeature>): ReferenceIndex {
  const all = referencePoints(features);
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

function referencePoints(features: ReadonlyMap<string, DerivedFeature>): readonly ReferencePoint[] {
  const found: ReferencePoint[] = [];
  const taken = new Set<Point>();
  for (const { feature, spec, points, measured } of features.values()) {
    if (!spec.reference) continue;
    const faceRadius = faceRadiusOf(feature);
    for (const [i, v] of feature.vertices.entries()) {
      const at = points[i];
      if (at === undefined || taken.has(at)) continue;
      taken.add(at);
      const ref = { of: feature.id, at: v.id };
      found.push({
        ref,
        key: refKey(ref),
        at,
        // without a size it is not known where the tape ends
        measured: (measured[i] ?? false) && (spec.tapedTo !== 'face' || faceRadius > 0),
        corner: feature.vertices.length > 1 ? v.id.toUpperCase() : null,
        faceRadius,
      });
    }
  }
  return found;
}
