import { COINCIDENT_M } from '@footmark/geometry';
import { type DerivedFeature, type FeatureKind, type RuleName, ruleValue, type Site } from '@footmark/site';
import type { SubjectIs } from './subject';

/** What a pipe keeps clear of. */
const OF_PATHS: Partial<Record<FeatureKind, RuleName>> = {
  building: 'building',
  shed: 'building',
  porch: 'building',
  deck: 'building',
  well: 'well',
  boundary: 'propertyLine',
  'boundary-line': 'propertyLine',
  service: 'otherService',
};

/** What the top edge of a dig keeps clear of. */
const OF_OUTLINES: Partial<Record<FeatureKind, RuleName>> = {
  boundary: 'propertyLine',
  'boundary-line': 'propertyLine',
  street: 'pavement',
  sidewalk: 'pavement',
  driveway: 'pavement',
  patio: 'pavement',
  service: 'toleranceZone',
  main: 'toleranceZone',
};

/** What a hole at a mark keeps clear of. */
const OF_MARKS: Partial<Record<FeatureKind, RuleName>> = { service: 'toleranceZone', main: 'toleranceZone' };

/** Whether a water pipe of a diameter (m), where it is given, is taken for a main: one of `mainDiameter` (m) or more. */
export function isWaterMain(diameter: number | undefined, mainDiameter: number): boolean {
  return (diameter ?? 0) >= mainDiameter - COINCIDENT_M;
}

/** The rule that a clearance is held against; null where none asks. */
export function clearanceRule(
  of: SubjectIs,
  { feature }: DerivedFeature,
  mainDiameter: number,
): RuleName | null {
  switch (of.is) {
    case 'path':
      if (feature.kind === 'service' && feature.fields.carries === 'water')
        return isWaterMain(feature.fields.diameter, mainDiameter) ? 'waterMain' : 'waterService';
      return OF_PATHS[feature.kind] ?? null;
    case 'mark':
      return OF_MARKS[feature.kind] ?? null;
    case 'outline':
      return OF_OUTLINES[feature.kind] ?? null;
  }
}

/** What the rules of clearances ask on a site (m), looked up once. */
export type Required = {
  readonly byRule: ReadonlyMap<RuleName, number>;
  /** A water pipe of this diameter is a main. */
  readonly mainDiameter: number;
  /** Of things that no rule asks about, or only nearer: within this they are worth listing. */
  readonly nearby: number;
  /** Nothing further off is listed. */
  readonly widest: number;
};

export function requiredOn(site: Site): Required {
  const names = new Set([
    'waterService' as const,
    'waterMain' as const,
    ...Object.values(OF_PATHS),
    ...Object.values(OF_OUTLINES),
    ...Object.values(OF_MARKS),
  ]);
  const byRule = new Map<RuleName, number>([...names].map((name) => [name, ruleValue(site, name)]));
  byRule.set('toleranceZone', toleranceZone(site));
  const nearby = ruleValue(site, 'nearby');
  const mainDiameter = ruleValue(site, 'waterMainDiameter');
  return { byRule, mainDiameter, nearby, widest: Math.max(nearby, ...byRule.values()) };
}

/** Half width (m) of the tolerance zone beyond the outside of a service: the site's, but never less than the least that is known. */
export function toleranceZone(site: Site): number {
  return Math.max(ruleValue(site, 'toleranceZone'), ruleValue(site, 'toleranceFloor'));
}
