// Indices run over the observations, hence `as number` on reads of the typed arrays.
import type { GlobalTest } from './adjustment';
import { chiSquareQuantile } from './chiSquare';
import type { Observation } from './observation';
import { UNCHECKED } from './tolerances';

/** vᵀPv within the chi-square limits at level `alpha`, both tails together; null for no degrees of freedom. */
export function testGlobally(vTPv: number, dof: number, alpha: number): GlobalTest | null {
  if (dof === 0) return null;
  const lower = chiSquareQuantile(alpha / 2, dof);
  const upper = chiSquareQuantile(1 - alpha / 2, dof);
  return { statistic: vTPv, lower, upper, alpha, passed: vTPv >= lower && vTPv <= upper };
}

/** v / (σ √r); 0 where r is under `UNCHECKED` (Baarda's data snooping statistic; from memory). */
export function standardizeResiduals(
  observations: readonly Observation[],
  residuals: Float64Array,
  redundancy: Float64Array,
): Float64Array {
  return Float64Array.from(observations, (observation, i) => {
    const r = redundancy[i] as number;
    return r < UNCHECKED ? 0 : (residuals[i] as number) / (observation.sigma * Math.sqrt(r));
  });
}
