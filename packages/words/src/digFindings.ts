import type { ExcavationFinding, TreeFinding } from '@footmark/dig';

/** Everything that can be said to stand in the way. */
export type AnyDigFinding = ExcavationFinding | TreeFinding;
