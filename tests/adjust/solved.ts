import {
  type Adjustment,
  adjust,
  type Observation,
  type Problem,
  type Solved,
  type Station,
} from '@footmark/adjust';

/** The adjustment, or a failed test when the geometry is singular or it was stopped. */
export function solved(problem: Problem, options?: Parameters<typeof adjust>[1]): Solved {
  const adjustment: Adjustment = adjust(problem, options);
  if (adjustment.status === 'singular') throw new Error(`singular: ${adjustment.undetermined.join(', ')}`);
  if (adjustment.status === 'stopped') throw new Error('stopped');
  return adjustment;
}

export const fixed = (x: number, y: number): Station => ({ fixed: { x, y } });
export const unknown = (at: number): Station => ({ at });

export function tape(id: string, from: Station, to: Station, value: number, sigma: number): Observation {
  return { kind: 'distance', id, from, to, value, sigma };
}
