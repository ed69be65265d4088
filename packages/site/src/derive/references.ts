import type { Point } from '@footmark/geometry';
import Flatbush from 'flatbush';
import { refKey } from '../document/pointOwners';
import type { Ref } from '../document/spot';
import type { DerivedFeature } from './deriveFeatures';

/** A point on the ground that can be found again and taped from. */
export type ReferencePoint = {
  readonly ref: Ref;
  readonly key: string;
  readonly at: Point;
  readonly measured: boolean;
  /** The corner's letter where the feature has several points, null where it is the one. */
  readonly corner: string | null;
};

/** Reference points by place. */
export type ReferenceIndex = {
  readonly all: readonly ReferencePoint[];
  /** Calls `accept` for the nearest points within `reach` (m), until it has said true `most` times. */
  readonly nearest: (
    from: Point,
    most: number,
    reach: number,
    accept: (reference: ReferencePoint) => boolean,
  ) => void;
};

/** Every point of every feature whose kind serves as a reference. */
export function referenceIndex(features: ReadonlyMap<string, DerivedFeature>): ReferenceIndex {
  const all = referencePoints(features);
  if (all.length === 0) return { all, nearest: () => {} };
  const boxes = new Flatbush(all.length);
  for (const { at } of all) boxes.add(at.x, at.y, at.x, at.y);
  boxes.finish();
  return {
    all,
    nearest: (from, most, reach, accept) => {
      boxes.neighbors(from.x, from.y, most, reach, (i) => {
        const reference = all[i];
        return reference !== undefined && accept(reference);
      });
    },
  };
}

function referencePoints(features: ReadonlyMap<string, DerivedFeature>): readonly ReferencePoint[] {
  const found: ReferencePoint[] = [];
  for (const { feature, spec, points, measured } of features.values()) {
    if (!spec.reference) continue;
    for (const [i, v] of feature.vertices.entries()) {
      const at = points[i];
      if (at === undefined) continue;
      const ref = { of: feature.id, at: v.id };
      found.push({
        ref,
        key: refKey(ref),
        at,
        measured: measured[i] ?? false,
        corner: feature.vertices.length > 1 ? v.id.toUpperCase() : null,
      });
    }
  }
  return found;
}
