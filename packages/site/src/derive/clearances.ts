import { type Point, pointToCircle, pointToPolyline, pointToRing } from '@footmark/geometry';
import type { FeatureKind } from '../kinds/featureKinds';
import { depthInBounds, distanceToBounds } from './bounds';
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

/** The features that clearances are kept from, those that answer one question together. */
export type ObstacleGroups = readonly (readonly DerivedFeature[])[];

/** Groups the features that have a face to keep clear of. */
export function obstacleGroups(features: readonly DerivedFeature[]): ObstacleGroups {
  const groups = new Map<FeatureKind, DerivedFeature[]>();
  for (const derived of features) {
    if (derived.spec.clearance === undefined) continue;
    const question = SAME_QUESTION[derived.feature.kind] ?? derived.feature.kind;
    const group = groups.get(question);
    if (group === undefined) groups.set(question, [derived]);
    else group.push(derived);
  }
  return [...groups.values()];
}

/** The nearest feature of each group, nearest first. */
export function nearestClearances(mark: Point, groups: ObstacleGroups): readonly Clearance[] {
  return groups.flatMap((group) => nearestOf(mark, group) ?? []).sort((a, b) => a.distance - b.distance);
}

/** Starts with the feature whose box is nearest, so that most others are passed over by their boxes alone. */
function nearestOf(mark: Point, group: readonly DerivedFeature[]): Clearance | null {
  const least = group.map((derived) => leastClearance(mark, derived));
  let start = 0;
  for (let i = 1; i < least.length; i++) if ((least[i] ?? 0) < (least[start] ?? 0)) start = i;
  const first = group[start];
  if (first === undefined) return null;
  let leader = clearanceTo(mark, first);
  for (let i = 0; i < group.length; i++) {
    const derived = group[i];
    if (derived === undefined || i === start || (least[i] ?? 0) >= leader.distance) continue;
    const clearance = clearanceTo(mark, derived);
    if (clearance.distance < leader.distance) leader = clearance;
  }
  return leader;
}

/** No clearance (m) to the feature is less than this. */
function leastClearance(mark: Point, { bounds, radius, spec }: DerivedFeature): number {
  const toBounds = distanceToBounds(mark, bounds);
  return toBounds === 0 && spec.clearance === 'outline' ? -depthInBounds(mark, bounds) : toBounds - radius;
}

/** From a mark to one feature's face. */
function clearanceTo(mark: Point, derived: DerivedFeature): Clearance {
  const { feature, spec, outline, radius } = derived;
  const centre = outline[0] ?? mark;
  const closed = spec.shape === 'area';
  const nearest =
    spec.shape === 'point'
      ? pointToCircle(mark, centre, radius)
      : closed && spec.clearance === 'outline'
        ? pointToRing(mark, outline)
        : pointToPolyline(mark, closed ? [...outline, centre] : outline);
  return {
    feature: feature.id,
    kind: feature.kind,
    distance: nearest.distance,
    at: nearest.at,
    toCentre: spec.shape === 'point' && radius === 0,
  };
}
