import { distance, type Point } from '@footmark/geometry';
import { type Mark, observationKinds } from '@footmark/site';
import type { MarkBase, MarkSymbolName } from '../symbols/markSymbolNames';

/** A landmark this near (m) to a thing of the drain is that thing, within what a counter and a tape agree to. */
const SAME_THING_M = 0.3;

/**
 * The mark's symbol by its kind and by what was done about it. `at`: where it is painted; a landmark on a thing of the drain is a ring round
 * that thing's symbol, which stays readable.
 */
export function markSymbol({ reading }: Mark, at: Point, drain: readonly Point[]): MarkSymbolName {
  const { symbol } = observationKinds[reading.seen];
  const around = symbol === 'mark-landmark' && drain.some((p) => distance(p, at) < SAME_THING_M);
  const base: MarkBase = around ? 'mark-landmark-around' : symbol;
  const { ground } = reading;
  return ground === undefined ? base : `${base}-${ground.state}`;
}
