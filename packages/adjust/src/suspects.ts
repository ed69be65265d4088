// Indices run over the observations, hence `as number` on reads of the typed arrays.
import type { Suspect, SuspectGroup } from './adjustment';
import { chiSquareQuantile } from './chiSquare';
import { type Factor, halfSolve } from './factor';
import type { Observation } from './observation';
import { dot } from './propagation';
import type { SparseRows } from './sparseRows';
import { TIED_CORRELATION, TIED_EVIDENCE, TIED_ROUNDING, UNCHECKED } from './tolerances';

type Fit = Readonly<{
  observations: readonly Observation[];
  residuals: Float64Array;
  redundancyNumbers: Float64Array;
  standardizedResiduals: Float64Array;
  factor: Factor;
  rows: SparseRows;
}>;

/**
 * See `Solved.suspects`. Leaving observation i out reduces vᵀPv by wᵢ², its standardised residual squared (Baarda's data
 * snooping; from memory), so that the difference of two wᵢ² is twice the logarithm of the odds between the two blunders.
 */
export function findSuspects(fit: Fit, alpha: number): readonly SuspectGroup[] {
  const critical = Math.sqrt(chiSquareQuantile(1 - alpha, 1));
  const size = (i: number) => Math.abs(fit.standardizedResiduals[i] as number);
  const ranked = fit.observations
    .map((_, i) => i)
    .filter((i) => (fit.redundancyNumbers[i] as number) >= UNCHECKED)
    .sort((a, b) => size(b) - size(a));
  const correlation = residualCorrelation(fit);
  const grouped = new Set<number>();
  const groups: SuspectGroup[] = [];
  for (const [rank, leader] of ranked.entries()) {
    if (size(leader) <= critical) break;
    if (grouped.has(leader)) continue;
    const most = size(leader) ** 2;
    const least = most - Math.max(TIED_EVIDENCE, TIED_ROUNDING * most);
    const tied: number[] = [];
    for (let k = rank + 1; k < ranked.length && size(ranked[k] as number) ** 2 >= least; k++) {
      const i = ranked[k] as number;
      if (!grouped.has(i) && Math.abs(correlation(leader, i)) >= TIED_CORRELATION) tied.push(i);
    }
    // By index, so that rounding does not choose the first.
    const group = [leader, ...tied].sort((a, b) => a - b);
    for (const i of group) grouped.add(i);
    groups.push(group.map((i) => suspectAt(fit, i)) as [Suspect, ...Suspect[]]); // the leader at least
  }
  return groups;
}

/** Correlation of two residuals, from Qvv = P⁻¹ − A Qxx Aᵀ. One forward solve for each observation that is asked for. */
function residualCorrelation({ factor, rows, redundancyNumbers: r }: Fit): (i: number, j: number) => number {
  const halves = new Map<number, Float64Array>();
  const halfOf = (i: number): Float64Array => {
    let half = halves.get(i);
    if (half === undefined) {
      half = new Float64Array(factor.order.length);
      halfSolve(factor, rows, i, half);
      halves.set(i, half);
    }
    return half;
  };
  return (i, j) => -dot(halfOf(i), halfOf(j)) / Math.sqrt((r[i] as number) * (r[j] as number));
}

function suspectAt(
  { observations, residuals, redundancyNumbers, standardizedResiduals }: Fit,
  index: number,
): Suspect {
  const { id } = observations[index] as Observation;
  return {
    id,
    index,
    standardizedResidual: standardizedResiduals[index] as number,
    blunder: -(residuals[index] as number) / (redundancyNumbers[index] as number),
  };
}
