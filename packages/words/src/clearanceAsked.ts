import type { EdgeClearance } from '@footmark/dig';

/** What bears on the ground beside a dig. */
const BEARING: ReadonlySet<EdgeClearance['kind']> = new Set(['building', 'shed', 'porch', 'deck']);

/** What is asked of a clearance; without a rule of distance something else may be, which a finding says. */
export type ClearanceAsked =
  | { readonly is: 'root-zone' | 'footing' | 'taken' | 'no-rule' | 'stay-clear' }
  | { readonly is: 'distance'; readonly metres: number };

export function clearanceAsked({ of, kind, distance, required }: EdgeClearance): ClearanceAsked {
  if (required !== null) return required === 0 ? { is: 'stay-clear' } : { is: 'distance', metres: required };
  if (kind === 'tree') return { is: 'root-zone' };
  if (of.is !== 'outline') return { is: 'no-rule' };
  if (BEARING.has(kind)) return { is: 'footing' };
  return { is: distance < 0 ? 'taken' : 'no-rule' };
}

/** On a dimension line: what is asked (m), where that is more than there is. */
export function askedMore({ verdict, required }: EdgeClearance): number | null {
  return verdict === 'misses' && required !== null && required > 0 ? required : null;
}
