// Indices run within 0 … n − 1 by the loops, hence `as number` on reads of the typed arrays.
import type { SparseRows } from './sparseRows';

export type Solver = 'cholesky' | 'qr';

/**
 * The normals of the adjustment as S⁻¹ Pᵀ L Lᵀ P S⁻¹, however L was found: S the column scales, P the pivot order.
 */
export type Factor = Readonly<{
  solver: Solver;
  /** L, lower triangle, row-major n × n. */
  lower: Float64Array;
  /** Column of the first entry of each row of L that is not zero. */
  first: Int32Array;
  /** Position → unknown. */
  order: Int32Array;
  /** Unknown → position. */
  position: Int32Array;
  /** Scale of each unknown: the inverse weighted length of its column, 1 for an empty one. */
  scale: Float64Array;
}>;

/** Solves L y = y in place, for a right side that is zero before position `from`. */
export function forwardSolve({ lower, first }: Factor, y: Float64Array, from = 0): void {
  const n = y.length;
  for (let i = from; i < n; i++) {
    const row = i * n;
    let sum = y[i] as number;
    for (let k = Math.max(from, first[i] as number); k < i; k++) {
      sum -= (lower[row + k] as number) * (y[k] as number);
    }
    y[i] = sum / (lower[row + i] as number);
  }
}

/** Solves Lᵀ y = y in place. */
export function backSolve({ lower, first }: Factor, y: Float64Array): void {
  const n = y.length;
  for (let i = n - 1; i >= 0; i--) {
    const row = i * n;
    const value = (y[i] as number) / (lower[row + i] as number);
    y[i] = value;
    for (let k = first[i] as number; k < i; k++) {
      y[k] = (y[k] as number) - (lower[row + k] as number) * value;
    }
  }
}

/**
 * Fills `y` with L⁻¹ P S a for row `index` a of `rows`, and returns the position before which it is zero. The product of two
 * such, a and b, is their covariance aᵀ Qxx b, and of one with itself its variance.
 */
export function halfSolve(factor: Factor, rows: SparseRows, index: number, y: Float64Array): number {
  const { position, scale } = factor;
  y.fill(0);
  let from = y.length;
  for (let k = rows.starts[index] as number; k < (rows.starts[index + 1] as number); k++) {
    const unknown = rows.columns[k] as number;
    const at = position[unknown] as number;
    y[at] = (rows.values[k] as number) * (scale[unknown] as number);
    if (at < from) from = at;
  }
  forwardSolve(factor, y, from);
  return from;
}

/** Qxx a, in the order of the unknowns, from L⁻¹ P S a, which it uses up. */
export function completeSolve(factor: Factor, y: Float64Array): Float64Array {
  backSolve(factor, y);
  return y.map(
    (_, unknown) => (y[factor.position[unknown] as number] as number) * (factor.scale[unknown] as number),
  );
}

/** Column `unknown` of the a priori covariance Qxx, by two triangular solves. */
export function covarianceColumn(factor: Factor, unknown: number): Float64Array {
  const y = new Float64Array(factor.order.length);
  const position = factor.position[unknown] as number;
  y[position] = factor.scale[unknown] as number;
  forwardSolve(factor, y, position);
  return completeSolve(factor, y);
}

/**
 * Redundancy number of each row, 1 − aᵀ Qxx a for the weighted row a, in [0, 1]: the share of an error in the observation
 * that shows in its residual. They sum to the degrees of freedom. One forward solve a row.
 */
export function redundancyNumbers(factor: Factor, rows: SparseRows): Float64Array {
  const redundancy = new Float64Array(rows.rowCount);
  const y = new Float64Array(factor.order.length);
  for (let i = 0; i < rows.rowCount; i++) {
    const from = halfSolve(factor, rows, i, y);
    let leverage = 0;
    for (let k = from; k < y.length; k++) leverage += (y[k] as number) ** 2;
    redundancy[i] = Math.min(1, Math.max(0, 1 - leverage));
  }
  return redundancy;
}
