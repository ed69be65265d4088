import type { ClearanceFace, DerivedFeature, FeatureKind } from '@footmark/site';

/** Kinds that marks do not list their distance to, and that a pipe or a dig does: what is paved, and the main. */
const MORE_FACES: Partial<Record<FeatureKind, ClearanceFace>> = {
  street: 'outline',
  sidewalk: 'outline',
  driveway: 'outline',
  patio: 'outline',
  curb: 'line',
  fence: 'line',
  main: 'line',
};

/** What a clearance to a feature is measured to; null for a thing that nothing keeps clear of. */
export function faceOf({ feature, spec }: DerivedFeature): ClearanceFace | null {
  return spec.clearance ?? MORE_FACES[feature.kind] ?? null;
}

/** Half of a feature's width (m): the radius of a trunk or a well, half a service's diameter; 0 where no size is given or it has none. */
export function halfWidthOf({ feature, radius }: DerivedFeature): number {
  return feature.kind === 'service' || feature.kind === 'main' ? (feature.fields.diameter ?? 0) / 2 : radius;
}

/** Of a thing that has a width none is given: distances are to its middle. */
export function isToCentre({ feature, spec }: DerivedFeature, halfWidth: number): boolean {
  const hasWidth = spec.shape === 'point' || feature.kind === 'service' || feature.kind === 'main';
  return hasWidth && halfWidth === 0;
}
