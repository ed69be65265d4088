import type { Observation } from './observation';
import { addDerivatives, residual } from './observationModel';
import type { SparseRows } from './sparseRows';

/**
 * Fills `misclosure` with observed less computed over σ and returns the sum of squares (vᵀPv); NaN where an observation
 * is not defined at `x`.
 */
export function misclosureAt(
  observations: readonly Observation[],
  x: Float64Array,
  misclosure: Float64Array,
): number {
  let sum = 0;
  observations.forEach((observation, i) => {
    const value = -residual(observation, x) / observation.sigma;
    misclosure[i] = value;
    sum += value * value;
  });
  return sum;
}

/** Fills `rows` with the derivatives at `x` over σ. Throws a RangeError that names an observation whose derivative is not finite. */
export function derivativesAt(observations: readonly Observation[], x: Float64Array, rows: SparseRows): void {
  rows.clear();
  for (const observation of observations) {
    addDerivatives(observation, x, rows);
    if (!rows.closeRow(1 / observation.sigma)) {
      throw new RangeError(`observation "${observation.id}": a derivative is not finite`);
    }
  }
}
