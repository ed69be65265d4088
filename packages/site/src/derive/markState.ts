import type { GroundState } from '../document/run';
import type { Locate } from './locates';
import type { Mark } from './marks';

/**
 * How far a mark has come: `computed` only, `located` with a receiver, or what was last done on the ground about it.
 */
export type MarkState = 'computed' | 'located' | GroundState['state'];

export function markState({ reading }: Mark, locates: readonly Locate[]): MarkState {
  if (reading.ground !== undefined) return reading.ground.state;
  return locates.some(({ mark }) => mark.reading.id === reading.id) ? 'located' : 'computed';
}
