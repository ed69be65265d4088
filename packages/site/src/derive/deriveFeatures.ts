import { type Point, ringSelfCrossings } from '@footmark/geometry';
import type { Feature } from '../document/feature';
import { refKey } from '../document/pointOwners';
import type { Site } from '../document/site';
import { type KindSpec, kindSpec } from '../kinds/featureKinds';
import { type Bounds, boundsOf } from './bounds';
import { type Finding, finding } from './finding';
import type { ResolvedPoints } from './resolvePoints';

/** A feature with its points in place. */
export type DerivedFeature = {
  readonly feature: Feature;
  readonly spec: KindSpec;
  readonly points: readonly Point[];
  /** By vertex: measured, or put there by eye. */
  readonly measured: readonly boolean[];
  readonly bounds: Bounds;
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
    features.set(feature.id, {
      feature,
      spec,
      points,
      measured: places.map((p) => p.measured),
      bounds: boundsOf(points),
      radius: spec.shape === 'point' ? radiusOf(feature) : 0,
    });
    const at = { kind: 'feature', id: feature.id } as const;
    if (feature.kind === 'tree' && feature.fields.trunkDiameter === undefined) {
      findings.push(finding('tree-has-no-diameter', 'warning', at, {}));
    }
    if (spec.shape === 'area' && ringSelfCrossings(points).length > 0) {
      findings.push(finding('outline-crosses-itself', 'warning', at, {}));
    }
  }
  return { features, findings };
}

function radiusOf(feature: Feature): number {
  if (feature.kind === 'tree') return (feature.fields.trunkDiameter ?? 0) / 2;
  return 'diameter' in feature.fields ? (feature.fields.diameter ?? 0) / 2 : 0;
}
