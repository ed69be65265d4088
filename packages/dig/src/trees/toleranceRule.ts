import type { FeatureOf, RuleName } from '@footmark/site';
import type { TreeAssumption } from './treeAssumption';

type Fields = FeatureOf<'tree'>['fields'];
type Tolerance = NonNullable<Fields['tolerance']>;
type Age = NonNullable<Fields['age']>;

const ROWS = {
  good: { young: 'goodYoung', mature: 'goodMature', overmature: 'goodOvermature' },
  moderate: { young: 'moderateYoung', mature: 'moderateMature', overmature: 'moderateOvermature' },
  poor: { young: 'poorYoung', mature: 'poorMature', overmature: 'poorOvermature' },
} as const satisfies Record<Tolerance, Record<Age, RuleName>>;

/** The row of the tolerance-and-age table for a tree. What is not known is taken as that which asks for the larger zone. */
export function toleranceRule({ fields }: FeatureOf<'tree'>): {
  readonly row: RuleName;
  readonly assumed: readonly TreeAssumption[];
} {
  const { tolerance, age } = fields;
  const assumed: TreeAssumption[] = [];
  if (tolerance === undefined) assumed.push({ fact: 'tolerance', as: 'poor' });
  if (age === undefined) assumed.push({ fact: 'age', as: 'overmature' });
  return { row: ROWS[tolerance ?? 'poor'][age ?? 'overmature'], assumed };
}
