import { type FeatureOf, type RuleName, ruleValue, type SiteRules, type TreeRuleId } from '@footmark/site';
import { boreDistanceRule } from './boreUnder';
import { type HoldingRoots, stabilityRoots, structuralRoots } from './holdingRoots';
import { toleranceRule } from './toleranceRule';
import type { TreeAssumption } from './treeAssumption';

type Tree = FeatureOf<'tree'>;
type Ruled = { readonly rules: SiteRules };

/** How far round a tree its roots matter, by one rule. Radii in metres from the trunk's centre. */
export type TreeZone = {
  readonly rule: TreeRuleId;
  readonly radius: number;
  /** Where roots hold it up; null where the rule knows no such zone. */
  readonly inner: HoldingRoots | null;
  /** The row that the radius comes from. */
  readonly row: RuleName;
  readonly assumed: readonly TreeAssumption[];
};

/** The zone of a tree whose stems count as one of `diameter` metres. */
export function treeZone(site: Ruled, tree: Tree, diameter: number, rule: TreeRuleId): TreeZone {
  const value = (name: RuleName) => ruleValue(site, name);
  const plain = { rule, inner: null, assumed: [] };
  switch (rule) {
    case 'bs-5837':
      return {
        ...plain,
        radius: Math.min(value('rpaMost'), value('rpaPerDiameter') * diameter),
        row: 'rpaPerDiameter',
      };
    case 'as-4970':
      return australian(site, tree, diameter);
    case 'critical-root-radius':
      return criticalRadius(site, tree, diameter);
    case 'tolerance-and-age': {
      const { row, assumed } = toleranceRule(tree);
      return { ...plain, radius: value(row) * diameter, row, assumed };
    }
    case 'six-diameters':
      return {
        ...plain,
        radius: value('trenchDiameters') * diameter,
        row: 'trenchDiameters',
        inner: stabilityRoots(site, diameter),
      };
    case 'bore-distance': {
      const row = boreDistanceRule(diameter);
      // the table counts from the trunk's face
      return { ...plain, radius: diameter / 2 + value(row), row };
    }
  }
}

/** AS 4970-2009: TPZ 12 × DBH within 2 m and 15 m (3.2), and the structural root zone in it. */
function australian(site: Ruled, tree: Tree, diameter: number): TreeZone {
  const value = (name: RuleName) => ruleValue(site, name);
  const inner = structuralRoots(site, tree, diameter);
  const wanted = value('tpzPerDiameter') * diameter;
  return {
    rule: 'as-4970',
    radius: Math.min(value('tpzMost'), Math.max(value('tpzLeast'), wanted)),
    inner,
    row: 'tpzPerDiameter',
    assumed: inner.fromTrunk ? [{ fact: 'base-diameter', as: 'trunk-diameter' }] : [],
  };
}

/** Half as much again for older, sensitive or unhealthy trees. Only where nothing says so does what is not known count as usual. */
function criticalRadius(site: Ruled, { fields }: Tree, diameter: number): TreeZone {
  const { age, condition, tolerance } = fields;
  const sensitive =
    age === 'overmature' || tolerance === 'poor' || condition === 'poor' || condition === 'dead';
  const row = sensitive ? 'crrPerDiameterSensitive' : 'crrPerDiameter';
  const usual: readonly (TreeAssumption & { readonly known: unknown })[] = [
    { fact: 'age', as: 'mature', known: age },
    { fact: 'condition', as: 'good', known: condition },
    { fact: 'tolerance', as: 'moderate', known: tolerance },
  ];
  const missing = sensitive ? [] : usual.filter(({ known }) => known === undefined);
  return {
    rule: 'critical-root-radius',
    radius: ruleValue(site, row) * diameter,
    inner: null,
    row,
    assumed: missing.map(({ fact, as }) => ({ fact, as })),
  };
}
