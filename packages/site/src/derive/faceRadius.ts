import type { Feature } from '../document/feature';
import { kindSpec } from '../kinds/featureKinds';
import { stemDiameterOf } from './stemDiameter';

/** Radius (m) of a round thing; 0 when no diameter is given, and for things that are not round. */
export function radiusOf(feature: Feature): number {
  if (feature.kind === 'tree') return (stemDiameterOf(feature) ?? 0) / 2;
  return 'diameter' in feature.fields ? (feature.fields.diameter ?? 0) / 2 : 0;
}

/**
 * How far (m) before the point of a feature a tape to it ends: the radius of what is taped to its near face, 0 for what is taped to
 * its point. Ties and taped points are both counted so.
 */
export function faceRadiusOf(feature: Feature): number {
  return kindSpec(feature.kind).tapedTo === 'face' ? radiusOf(feature) : 0;
}
