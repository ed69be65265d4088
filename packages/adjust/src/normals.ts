// Indices run within the sizes of the rows, hence `as number` on reads of the typed arrays.
import { backSolve, type Factor, forwardSolve } from './factor';
import type { SparseRows } from './sparseRows';

/** The normal equations, scaled to unit diagonal: `matrix` (lower triangle, row-major n × n) times y = `right`. */
export type Normals = Readonly<{
  matrix: Float64Array;
  right: Float64Array;
  /** Scale of each unknown: x = scale · y. 1 for an unknown that no row touches; its diagonal is then 0. */
  scale: Float64Array;
}>;

/** Forms the scaled normals of weighted rows and weighted misclosures (observed less computed, over σ). */
export function formNormals(rows: SparseRows, misclosure: Float64Array): Normals {
  const n = rows.columnCount;
  const { starts, columns, values } = rows;
  const matrix = new Float64Array(n * n);
  const right = new Float64Array(n);
  for (let r = 0; r < rows.rowCount; r++) {
    const end = starts[r + 1] as number;
    for (let p = starts[r] as number; p < end; p++) {
      const i = columns[p] as number;
      const value = values[p] as number;
      right[i] = (right[i] as number) + value * (misclosure[r] as number);
      for (let q = starts[r] as number; q < end; q++) {
        const j = columns[q] as number;
        if (j <= i) matrix[i * n + j] = (matrix[i * n + j] as number) + value * (values[q] as number);
      }
    }
  }
  const scale = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    const diagonal = matrix[i * n + i] as number;
    scale[i] = diagonal > 0 ? 1 / Math.sqrt(diagonal) : 1;
  }
  for (let i = 0; i < n; i++) {
    const scaleI = scale[i] as number;
    right[i] = (right[i] as number) * scaleI;
    for (let j = 0; j <= i; j++)
      matrix[i * n + j] = (matrix[i * n + j] as number) * scaleI * (scale[j] as number);
  }
  return { matrix, right, scale };
}

/**
 * Cholesky factor of the scaled normals with `damping` added to the diagonal, within the envelope of the matrix; null when
 * a pivot is not above `pivotTolerance`. Row by row (Golub & Van Loan, Matrix Computations, 4.2; from memory).
 */
export function choleskyFactor(normals: Normals, damping: number, pivotTolerance: number): Factor | null {
  const { matrix, scale } = normals;
  const n = scale.length;
  const lower = new Float64Array(n * n);
  const first = new Int32Array(n);
  for (let i = 0; i < n; i++) {
    const row = i * n;
    let start = 0;
    while (start < i && matrix[row + start] === 0) start++;
    first[i] = start;
    let pivot = (matrix[row + i] as number) + damping;
    for (let j = start; j < i; j++) {
      const other = j * n;
      let sum = matrix[row + j] as number;
      for (let k = Math.max(start, first[j] as number); k < j; k++) {
        sum -= (lower[row + k] as number) * (lower[other + k] as number);
      }
      const value = sum / (lower[other + j] as number);
      lower[row + j] = value;
      pivot -= value * value;
    }
    if (!(pivot > pivotTolerance)) return null;
    lower[row + i] = Math.sqrt(pivot);
  }
  const order = Int32Array.from(scale.keys());
  return { solver: 'cholesky', lower, first, order, position: order, scale };
}

/** The scaled step y of the (damped) normals whose Cholesky factor is `factor`. */
export function solveNormals(factor: Factor, normals: Normals): Float64Array {
  const step = normals.right.slice();
  forwardSolve(factor, step);
  backSolve(factor, step);
  return step;
}
