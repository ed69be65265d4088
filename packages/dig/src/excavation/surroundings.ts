import { boxesMeet, type Region } from '@footmark/geometry';
import type { Derived, DerivedFeature, FeatureKind, FeatureOf } from '@footmark/site';
import { boundaryLineKinds } from './boundaryLines';

/** Overlaps below this (m²) are rounding: a square centimetre. */
export const OVERLAP_M2 = 1e-4;

type DerivedStanding = DerivedFeature & { readonly feature: Standing };

/** Features by what they mean to a dig. */
export type Surroundings = {
  readonly pavements: readonly DerivedFeature[];
  readonly buildings: readonly DerivedStanding[];
  /** Boundaries that close. */
  readonly lots: readonly DerivedFeature[];
  /** All boundary lines, however drawn. */
  readonly boundaries: readonly DerivedFeature[];
  /** Boundary lines and rights of way, of which two may be drawn for one. */
  readonly lines: readonly DerivedFeature[];
  readonly all: readonly DerivedFeature[];
};

const PAVEMENTS: readonly FeatureKind[] = ['street', 'sidewalk', 'driveway', 'patio'];
const ON_FOOTINGS = ['building', 'shed', 'porch', 'deck'] as const satisfies readonly FeatureKind[];
const BOUNDARIES: readonly FeatureKind[] = ['boundary', 'boundary-line'];

export function surroundingsOf({ features }: Pick<Derived, 'features'>): Surroundings {
  const all = [...features.values()];
  const of = (kinds: readonly FeatureKind[]) => all.filter((f) => kinds.includes(f.feature.kind));
  return {
    pavements: of(PAVEMENTS),
    buildings: all.filter((f): f is DerivedStanding => standsOnFootings(f.feature)),
    lots: of(['boundary']),
    boundaries: of(BOUNDARIES),
    lines: of(boundaryLineKinds),
    all,
  };
}

/** What stands on footings. Of other kinds than a building nothing is ever known of them. */
export type Standing = FeatureOf<(typeof ON_FOOTINGS)[number]>;

/** Whether a footing of it is to be minded. */
export function standsOnFootings(feature: { readonly kind: string }): feature is Standing {
  return ON_FOOTINGS.some((kind) => kind === feature.kind);
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
