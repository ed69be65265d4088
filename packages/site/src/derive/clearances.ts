import { type Point, pointToCircle, pointToPolyline, pointToRing } from '@footmark/geometry';
import type { FeatureKind } from '../kinds/featureKinds';
import { distanceToBounds } from './bounds';
import type { DerivedFeature } from './deriveFeatures';

/** Least distance (m) from a mark to a feature's face, negative inside, and the place on the face. */
export type Clearance = {
  readonly feature: string;
  readonly kind: FeatureKind;
  readonly distance: number;
  readonly at: Point;
  /** The face was not given (a trunk without a diameter): the distance is to the centre. */
  readonly toCentre: boolean;
};

/** Kinds that answer one question together: a boundary is one, however it was drawn. */
const SAME_QUESTION: Partial<Record<FeatureKind, FeatureKind>> = {
  'boundary-line': 'boundary',
  shed: 'building',
};

/** The nearest feature of each kind that clearances are kept from, nearest first. */
export function nearestClearances(mark: Point, features: readonly DerivedFeature[]): readonly Clearance[] {
  const best = new Map<FeatureKind, Clearance>();
  for (const derived of features) {
    const question = SAME_QUESTION[derived.feature.kind] ?? derived.feature.kind;
    const leader = best.get(question);
    const toBounds = distanceToBounds(mark, derived.bounds);
    // within the box the mark may be inside the thing, and how deep is not known yet
    const least = toBounds > 0 ? toBounds - radiusOf(derived) : -Infinity;
    if (leader !== undefined && least >= leader.distance) continue;
    const clearance = clearanceTo(mark, derived);
    if (leader === undefined || clearance.distance < leader.distance) best.set(question, clearance);
  }
  return [...best.values()].sort((a, b) => a.distance - b.distance);
}

/** From a mark to one feature's face. */
export function clearanceTo(mark: Point, derived: DerivedFeature): Clearance {
  const { feature, spec, points } = derived;
  const centre = points[0] ?? mark;
  const closed = spec.shape === 'area';
  const nearest =
    spec.shape === 'point'
      ? pointToCircle(mark, centre, radiusOf(derived))
      : closed && spec.clearance === 'outline'
        ? pointToRing(mark, points)
        : pointToPolyline(mark, closed ? [...points, centre] : points);
  return {
    feature: feature.id,
    kind: feature.kind,
    distance: nearest.distance,
    at: nearest.at,
    toCentre: spec.shape === 'point' && radiusOf(derived) === 0,
  };
}

/** Of a round thing (m); 0 when no diameter is given, and for things that are not round. */
export function radiusOf({ feature, spec }: DerivedFeature): number {
  if (spec.shape !== 'point') return 0;
  if (feature.kind === 'tree') return (feature.fields.trunkDiameter ?? 0) / 2;
  return 'diameter' in feature.fields ? (feature.fields.diameter ?? 0) / 2 : 0;
}
