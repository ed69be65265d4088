// Indices run over the observations, hence `as number` on reads of the typed arrays.
import type { GlobalTest, Suspect } from './adjustment';
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

/** The checked observation with the largest standardised residual, or null; of equal ones the first. */
export function findSuspect(
  observations: readonly Observation[],
  residuals: Float64Array,
  redundancy: Float64Array,
  standardized: Float64Array,
  alpha: number,
): Suspect | null {
  let index = -1;
  for (let i = 0; i < observations.length; i++) {
    if ((redundancy[i] as number) < UNCHECKED) continue;
    if (index < 0 || Math.abs(standardized[i] as number) > Math.abs(standardized[index] as number)) index = i;
  }
  const observation = observations[index];
  if (observation === undefined) return null;
  const standardizedResidual = standardized[index] as number;
  const critical = Math.sqrt(chiSquareQuantile(1 - alpha, 1));
  return {
    id: observation.id,
    index,
    standardizedResidual,
    blunder: -(residuals[index] as number) / (redundancy[index] as number),
    critical,
    significant: Math.abs(standardizedResidual) > critical,
  };
}
