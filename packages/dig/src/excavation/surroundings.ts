import { boxesMeet, type Region } from '@footmark/geometry';
import type { Derived, DerivedFeature, FeatureKind } from '@footmark/site';

/** Overlaps below this (m²) are rounding: a square centimetre. */
export const OVERLAP_M2 = 1e-4;

/** Features by what they mean to a dig. */
export type Surroundings = {
  readonly pavements: readonly DerivedFeature[];
  readonly buildings: readonly DerivedFeature[];
  /** Boundaries that close. */
  readonly lots: readonly DerivedFeature[];
  /** All boundary lines, however drawn. */
  readonly boundaries: readonly DerivedFeature[];
  readonly all: readonly DerivedFeature[];
};

const PAVEMENTS: readonly FeatureKind[] = ['street', 'sidewalk', 'driveway', 'patio'];
const BUILDINGS: readonly FeatureKind[] = ['building', 'shed', 'porch', 'deck'];
const BOUNDARIES: readonly FeatureKind[] = ['boundary', 'boundary-line'];

export function surroundingsOf({ features }: Pick<Derived, 'features'>): Surroundings {
  const all = [...features.values()];
  const of = (kinds: readonly FeatureKind[]) => all.filter((f) => kinds.includes(f.feature.kind));
  return {
    pavements: of(PAVEMENTS),
    buildings: of(BUILDINGS),
    lots: of(['boundary']),
    boundaries: of(BOUNDARIES),
    all,
  };
}

/** The ground that an area covers. */
export function regionOf({ outline }: DerivedFeature): Region {
  return [outline];
}

/** Whether the box of a feature with its radius meets another. */
export function isNear({ bounds, radius }: DerivedFeature, box: Parameters<typeof boxesMeet>[0]): boolean {
  return boxesMeet(
    {
      minX: bounds.minX - radius,
      minY: bounds.minY - radius,
      maxX: bounds.maxX + radius,
      maxY: bounds.maxY + radius,
    },
    box,
  );
}
