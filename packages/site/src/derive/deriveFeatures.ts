import { arcRingArea, COINCIDENT_M, flattenArcs, type Point, ringCrossesItself } from '@footmark/geometry';
import type { Feature } from '../document/feature';
import { refKey } from '../document/pointOwners';
import type { Site } from '../document/site';
import { type KindSpec, kindSpec } from '../kinds/featureKinds';
import { settings } from '../rules/settings';
import { type Bounds, boundsOf } from './bounds';
import { hasClosing, heldVertex } from './closing';
import { radiusOf } from './faceRadius';
import { type Finding, finding } from './finding';
import type { ResolvedPoints } from './resolvePoints';
import { stemDiameterOf } from './stemDiameter';

/** Metres: how far the outline of a feature with arcs may lie from them. */
const OUTLINE_SAGITTA_M = 0.002;

/** How the measured sides of an outline come back to its first point. Lengths in metres. */
export type FeatureClosure = {
  /** From the first point to where the sides, as measured, came out. */
  readonly misclosure: Point;
  readonly length: number;
  /** Along the sides, round the arcs. */
  readonly perimeter: number;
  /** The n of 1:n, perimeter over misclosure; Infinity for one that closes. */
  readonly ratio: number;
  /** Of the outline as it is drawn (m²), arcs exact. */
  readonly area: number;
  /** The misclosure was shared out by the compass rule. */
  readonly balanced: boolean;
};

/** A feature with its points in place. */
export type DerivedFeature = {
  readonly feature: Feature;
  readonly spec: KindSpec;
  readonly points: readonly Point[];
  /** By vertex: measured, or put there by eye. */
  readonly measured: readonly boolean[];
  /** The sweep (rad, right positive, 0 straight) of each leg; leg i runs from vertex i to the next, in an area at last to the first. */
  readonly sweeps: readonly number[];
  /** The points with its arcs as chords, 2 mm from them at the most (of an arc hundreds of metres long more); without arcs `points` itself. */
  readonly outline: readonly Point[];
  /** By point of the outline: whether the leg that it lies on or ends is measured; without arcs `measured` itself. */
  readonly outlineMeasured: readonly boolean[];
  readonly bounds: Bounds;
  /** Of an area with a closing course. */
  readonly closure: FeatureClosure | null;
  /** Of a round thing (m); 0 when no diameter is given, and for things that are not round. */
  readonly radius: number;
};

/** Places every feature; one with a vertex that has no place is left out. */
export function deriveFeatures(
  site: Site,
  resolved: ResolvedPoints,
): { readonly features: ReadonlyMap<string, DerivedFeature>; readonly findings: readonly Finding[] } {
  const features = new Map<string, DerivedFeature>();
  const findings: Finding[] = [];
  for (const feature of site.features) {
    const places = feature.vertices.flatMap(
      (v) => resolved.points.get(refKey({ of: feature.id, at: v.id })) ?? [],
    );
    if (places.length < feature.vertices.length) continue;
    const spec = kindSpec(feature.kind);
    const points = places.map((p) => p.at);
    const measured = places.map((p) => p.measured);
    const closed = spec.shape === 'area';
    const sweeps = sweepsOf(feature, closed);
    const outline = flattenArcs(points, sweeps, closed, OUTLINE_SAGITTA_M);
    const at = { kind: 'feature', id: feature.id } as const;
    features.set(feature.id, {
      feature,
      spec,
      points,
      measured,
      sweeps,
      outline,
      outlineMeasured: outline === points ? measured : measuredAlong(outline, points, measured),
      bounds: boundsOf(outline),
      closure: closed ? closureOf(feature, points, sweeps, resolved, findings) : null,
      radius: spec.shape === 'point' ? radiusOf(feature) : 0,
    });
    if (feature.kind === 'tree' && stemDiameterOf(feature) === null) {
      findings.push(finding('tree-has-no-diameter', 'warning', at, {}));
    }
    if (closed && ringCrossesItself(outline)) {
      findings.push(finding('outline-crosses-itself', 'warning', at, {}));
    }
  }
  return { features, findings };
}

function sweepsOf(feature: Feature, closed: boolean): readonly number[] {
  const [, ...ends] = feature.vertices.map((v) => v.spot);
  const spots = closed && feature.closing !== undefined ? [...ends, feature.closing] : ends;
  return spots.map((spot) => (spot.by === 'arc' ? spot.sweep : 0));
}

/** A point on an arc is known as the vertex at the arc's end is. */
function measuredAlong(
  outline: readonly Point[],
  points: readonly Point[],
  measured: readonly boolean[],
): readonly boolean[] {
  let next = 0;
  return outline.map((p) => {
    const state = measured[next % points.length] ?? false;
    if (p === points[next]) next += 1;
    return state;
  });
}

function closureOf(
  feature: Feature,
  points: readonly Point[],
  sweeps: readonly number[],
  resolved: ResolvedPoints,
  findings: Finding[],
): FeatureClosure | null {
  const at = { kind: 'feature', id: feature.id } as const;
  if (feature.balance !== undefined) {
    const held = heldVertex(feature);
    if (!hasClosing(feature))
      findings.push(finding('cannot-balance', 'warning', at, { because: 'no-closing' }));
    else if (held !== null) {
      findings.push(finding('cannot-balance', 'warning', { ...at, vertex: held }, { because: 'held' }));
    }
  }
  const closing = resolved.closings.get(feature.id);
  if (closing === undefined) return null;
  const { misclosure, misclosureLength: length, perimeter, ratio } = closing.closure;
  if (length > COINCIDENT_M) {
    const poor = ratio < 1 / settings.misclosure.value;
    findings.push(
      finding('boundary-misclosure', poor ? 'warning' : 'note', at, {
        misclosure: length,
        ratio,
        balanced: closing.balanced,
      }),
    );
  }
  const area = Math.abs(arcRingArea(points, sweeps));
  return { misclosure, length, perimeter, ratio, area, balanced: closing.balanced };
}
