import { COINCIDENT_M, type Point, pointToRing } from '@footmark/geometry';
import type { DerivedFeature, FeatureKind, RuleName } from '@footmark/site';
import { clearanceRule, type Required } from './clearanceRule';
import { edgeDistance } from './edgeDistance';
import { faceOf, halfWidthOf, isToCentre } from './face';
import type { Subject, SubjectIs } from './subject';

/**
 * `meets` and `misses` the rule; `by-depth`: nearer to a water pipe in plan than is asked, so that depths and the sewer's material decide; `crosses`: a pipe
 * goes over the line, which is a matter of whose land it is or of the gap in height; `serves`: a pipe begins or ends at the building.
 */
export type ClearanceVerdict = 'meets' | 'misses' | 'by-depth' | 'crosses' | 'serves';

/** How near a pipe, a mark or a dig comes to one feature. Distances in metres between outsides, negative where they overlap. */
export type EdgeClearance = {
  readonly of: SubjectIs;
  readonly feature: string;
  readonly kind: FeatureKind;
  readonly distance: number;
  /** On the subject. */
  readonly from: Point;
  /** On the feature's face. */
  readonly at: Point;
  /** Along a path (plan m), else null. */
  readonly station: number | null;
  /** The feature's size is not given: the distance is to its middle. */
  readonly toCentre: boolean;
  readonly rule: RuleName | null;
  readonly required: number | null;
  /** Null without a rule. */
  readonly verdict: ClearanceVerdict | null;
};

/**
 * From one subject to one feature; null when nothing keeps clear of the feature or it is not nearer than `reach` (m; absent: than what is
 * listed). Depends on its arguments and nothing else.
 */
export function clearanceTo(
  subject: Subject,
  feature: DerivedFeature,
  required: Required,
  reach?: number,
): EdgeClearance | null {
  const face = faceOf(feature);
  if (face === null) return null;
  const halfWidth = halfWidthOf(feature);
  const rule = clearanceRule(subject.of, feature, required.mainDiameter);
  const asked = rule === null ? null : (required.byRule.get(rule) ?? null);
  const within = reach ?? Math.max(required.nearby, asked ?? 0);
  const edge = edgeDistance(subject, feature, face, halfWidth, within);
  if (edge === null) return null;
  const { distance, from, at, station, meets } = edge;
  return {
    of: subject.of,
    feature: feature.feature.id,
    kind: feature.feature.kind,
    distance,
    from,
    at,
    station,
    toCentre: isToCentre(feature, halfWidth),
    rule,
    required: asked,
    verdict: asked === null ? null : verdictOn(subject, feature, rule, asked, distance, meets),
  };
}

function verdictOn(
  subject: Subject,
  feature: DerivedFeature,
  rule: RuleName | null,
  asked: number,
  distance: number,
  meets: boolean,
): ClearanceVerdict {
  if (distance >= asked - COINCIDENT_M) return 'meets';
  if (subject.of.is !== 'path') return 'misses';
  switch (rule) {
    case 'waterService':
    case 'waterMain':
      return 'by-depth';
    case 'propertyLine':
    case 'otherService':
      return meets ? 'crosses' : 'misses';
    case 'building':
      return beginsOrEndsAt(subject, feature, asked) ? 'serves' : 'misses';
    default:
      return 'misses';
  }
}

/** An end of the pipe lies in the building, or nearer to it than is asked. */
function beginsOrEndsAt({ points }: Subject, { outline }: DerivedFeature, within: number): boolean {
  return [points[0], points.at(-1)].some(
    (end) => end !== undefined && pointToRing(end, outline).distance < within,
  );
}
