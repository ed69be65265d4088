// Indices run over rows and columns that this file sizes, hence `as number` on reads of the typed arrays.
import type { Gradient } from './adjustment';
import { completeSolve, type Factor, halfSolve } from './factor';
import { SparseRows } from './sparseRows';

/** See `Solved.propagate`. One forward solve a function, then products: symmetric to the last bit, variances never below 0. */
export function propagate(factor: Factor, gradients: readonly Gradient[]): readonly Float64Array[] {
  const halves = halvesOf(factor, gradients);
  const covariance = halves.map(() => new Float64Array(halves.length));
  halves.forEach((half, i) => {
    for (let j = 0; j <= i; j++) {
      const value = dot(half, halves[j] as Float64Array);
      (covariance[i] as Float64Array)[j] = value;
      (covariance[j] as Float64Array)[i] = value;
    }
  });
  return covariance;
}

/** See `Solved.shares`. N = Σ aᵢ aᵢᵀ, so that gᵀ N⁻¹ g = Σ (aᵢᵀ N⁻¹ g)². */
export function shares(factor: Factor, rows: SparseRows, gradient: Gradient): Float64Array {
  const [half] = halvesOf(factor, [gradient]) as [Float64Array]; // one in, one out
  const solved = completeSolve(factor, half);
  const parts = new Float64Array(rows.rowCount);
  for (let r = 0; r < rows.rowCount; r++) {
    let sum = 0;
    for (let k = rows.starts[r] as number; k < (rows.starts[r + 1] as number); k++) {
      sum += (rows.values[k] as number) * (solved[rows.columns[k] as number] as number);
    }
    parts[r] = sum * sum;
  }
  return parts;
}

export function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let k = 0; k < a.length; k++) sum += (a[k] as number) * (b[k] as number);
  return sum;
}

function halvesOf(factor: Factor, gradients: readonly Gradient[]): readonly Float64Array[] {
  const n = factor.order.length;
  const rows = new SparseRows(gradients.length, n);
  return gradients.map((gradient, i) => {
    for (const { unknown, derivative } of gradient) rows.add(unknown, derivative);
    if (!rows.closeRow(1)) throw new RangeError(`function ${i}: a derivative is not finite`);
    const half = new Float64Array(n);
    halfSolve(factor, rows, i, half);
    return half;
  });
}
