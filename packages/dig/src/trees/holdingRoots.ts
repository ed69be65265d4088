import { type FeatureOf, type RuleName, ruleValue, type SiteRules } from '@footmark/site';

/** Within so many metres of a trunk's centre roots hold the tree up, and it may fall when they are cut. */
export type HoldingRoots = {
  readonly is: 'structural-root-zone' | 'stability';
  readonly radius: number;
  readonly row: RuleName;
  /** The thickness above the root flare, which is larger, was not measured: the trunk's was taken. */
  readonly fromTrunk: boolean;
};

type Ruled = { readonly rules: SiteRules };

/**
 * AS 4970-2009, 3.3.5: (D × 50)^0.42 × 0.64 with the diameter above the root buttress, at least 1.5 m. Without that diameter the trunk's
 * is taken.
 */
export function structuralRoots(site: Ruled, { fields }: FeatureOf<'tree'>, diameter: number): HoldingRoots {
  const value = (name: RuleName) => ruleValue(site, name);
  const base = fields.baseDiameter ?? diameter;
  const radius = (base * value('srzFactor')) ** value('srzExponent') * value('srzScale');
  return {
    is: 'structural-root-zone',
    radius: Math.max(value('srzLeast'), radius),
    row: 'srzFactor',
    fromTrunk: fields.baseDiameter === undefined,
  };
}

/** Trunk diameters that are quoted for stability. */
export function stabilityRoots(site: Ruled, diameter: number): HoldingRoots {
  const radius = ruleValue(site, 'stabilityDiameters') * diameter;
  return { is: 'stability', radius, row: 'stabilityDiameters', fromTrunk: false };
}
