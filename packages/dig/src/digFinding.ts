import type { RuleName, Target } from '@footmark/site';

/** `must`: a rule is not met, or people can be hurt; `should`: look at it before the dig; `note`: worth knowing. */
export type DigSeverity = 'must' | 'should' | 'note';

/**
 * Something that stands in the way of a dig or a pipe. `at` is what it is about and `place` where on the plan; `rule` the rule that asks,
 * null where none does. `values` in metres, m², m³, radians or shares, or the names that people gave. Sentences are made of them elsewhere.
 */
export type DigFinding<Code extends string = string, Values extends object = object> = {
  readonly code: Code;
  readonly severity: DigSeverity;
  readonly at: Target;
  readonly place: { readonly x: number; readonly y: number } | null;
  readonly rule: RuleName | null;
  readonly values: Readonly<Values>;
};

const RANK: Record<DigSeverity, number> = { must: 0, should: 1, note: 2 };

/** What must be done first, then what should be looked at, then notes; otherwise in the order given. */
export function mostPressingFirst<Found extends { readonly severity: DigSeverity }>(
  findings: readonly Found[],
): readonly Found[] {
  return findings.toSorted((a, b) => RANK[a.severity] - RANK[b.severity]);
}
