import type { DerivedFeature } from '@footmark/site';
import Flatbush from 'flatbush';
import { faceOf, halfWidthOf } from './face';
import type { LegTable } from './legTable';

/** The features that clearances are kept from, by place. */
export type FeatureIndex = {
  readonly all: readonly DerivedFeature[];
  /** Those that can be nearer to a subject than `reach` (m), in the order of the site: some may be further off. */
  readonly near: (table: LegTable, reach: number) => readonly DerivedFeature[];
};

export function featureIndex(features: Iterable<DerivedFeature>): FeatureIndex {
  const all: DerivedFeature[] = [];
  for (const feature of features) if (faceOf(feature) !== null) all.push(feature);
  let index: Flatbush | null = null;
  const indexed = () => {
    if (index !== null) return index;
    index = new Flatbush(all.length);
    for (const feature of all) {
      const { minX, minY, maxX, maxY } = feature.bounds;
      const out = halfWidthOf(feature);
      index.add(minX - out, minY - out, maxX + out, maxY + out);
    }
    index.finish();
    return index;
  };
  return {
    all,
    near({ boxes, halfWidths }, reach) {
      if (reach === Infinity || all.length === 0) return all;
      const taken = new Uint8Array(all.length);
      for (const [k, halfWidth] of halfWidths.entries()) {
        const [minX = 0, minY = 0, maxX = 0, maxY = 0] = boxes.subarray(4 * k, 4 * k + 4);
        const out = halfWidth + reach;
        indexed().search(minX - out, minY - out, maxX + out, maxY + out, (i) => {
          taken[i] = 1;
          return false;
        });
      }
      return all.filter((_, i) => taken[i] === 1);
    },
  };
}
