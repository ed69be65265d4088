// Indices run within the sizes of the rows, hence `as number` on reads and `as Float64Array` on columns.
import type { Factor } from './factor';
import type { SparseRows } from './sparseRows';
import { NULL_SHARE, RANK } from './tolerances';

/** Full rank gives the factor and the scaled step; else the unknowns that the rows leave undetermined, ascending. */
export type PivotedQr =
  | Readonly<{ ok: true; factor: Factor; step: Float64Array }>
  | Readonly<{ ok: false; rank: number; undetermined: readonly number[] }>;

/**
 * Least squares by Householder QR with column pivoting of the weighted design matrix, columns scaled to unit length: it
 * does not square the condition as the normals do (Golub & Van Loan, Matrix Computations, 5.4; from memory). The
 * undetermined unknowns are those that a vector of the null space moves. Dense: about 2 m n² operations.
 */
export function solvePivotedQr(rows: SparseRows, misclosure: Float64Array): PivotedQr {
  const m = rows.rowCount;
  const n = rows.columnCount;
  const { columns, scale } = scaledColumns(rows);
  const order = Int32Array.from(columns.keys());
  const right = misclosure.slice(0, m);
  let rank = 0;
  while (rank < Math.min(m, n)) {
    const { position, length } = longestFrom(columns, rank);
    if (length <= RANK) break;
    swap(columns, order, rank, position);
    reflect(columns, right, rank, length);
    rank++;
  }
  if (rank < n) return { ok: false, rank, undetermined: undeterminedOf(columns, order, rank) };

  const lower = new Float64Array(n * n);
  for (let i = 0; i < n; i++) lower.set((columns[i] as Float64Array).subarray(0, i + 1), i * n);
  const solved = solveUpper(columns, right, n);
  const step = new Float64Array(n);
  const position = new Int32Array(n);
  for (let k = 0; k < n; k++) {
    step[order[k] as number] = solved[k] as number;
    position[order[k] as number] = k;
  }
  const factor: Factor = { solver: 'qr', lower, first: new Int32Array(n), order, position, scale };
  return { ok: true, factor, step };
}

function scaledColumns(rows: SparseRows): { columns: Float64Array[]; scale: Float64Array } {
  const columns = Array.from({ length: rows.columnCount }, () => new Float64Array(rows.rowCount));
  for (let r = 0; r < rows.rowCount; r++) {
    for (let k = rows.starts[r] as number; k < (rows.starts[r + 1] as number); k++) {
      (columns[rows.columns[k] as number] as Float64Array)[r] = rows.values[k] as number;
    }
  }
  const scale = new Float64Array(rows.columnCount);
  columns.forEach((column, i) => {
    const length = Math.sqrt(squaredFrom(column, 0));
    const factor = length > 0 ? 1 / length : 1;
    scale[i] = factor;
    for (let r = 0; r < column.length; r++) column[r] = (column[r] as number) * factor;
  });
  return { columns, scale };
}

function longestFrom(columns: readonly Float64Array[], from: number): { position: number; length: number } {
  let position = from;
  let longest = -1;
  for (let k = from; k < columns.length; k++) {
    const squared = squaredFrom(columns[k] as Float64Array, from);
    if (squared > longest) {
      longest = squared;
      position = k;
    }
  }
  return { position, length: Math.sqrt(longest) };
}

function swap(columns: Float64Array[], order: Int32Array, a: number, b: number): void {
  const column = columns[a] as Float64Array;
  columns[a] = columns[b] as Float64Array;
  columns[b] = column;
  const unknown = order[a] as number;
  order[a] = order[b] as number;
  order[b] = unknown;
}

/** Reflects column `k` (of `length` from row k down) onto its diagonal, and the columns after it and the right side with it. */
function reflect(columns: readonly Float64Array[], right: Float64Array, k: number, length: number): void {
  const v = columns[k] as Float64Array;
  const head = v[k] as number;
  const diagonal = head > 0 ? -length : length;
  v[k] = head - diagonal;
  const beta = 1 / (length * (length + Math.abs(head)));
  for (let j = k + 1; j <= columns.length; j++) {
    const target = j < columns.length ? (columns[j] as Float64Array) : right;
    let dot = 0;
    for (let r = k; r < v.length; r++) dot += (v[r] as number) * (target[r] as number);
    dot *= beta;
    for (let r = k; r < v.length; r++) target[r] = (target[r] as number) - dot * (v[r] as number);
  }
  v[k] = diagonal;
}

/** Solves R y = right for the leading `size` columns of R. */
function solveUpper(columns: readonly Float64Array[], right: Float64Array, size: number): Float64Array {
  const y = right.slice(0, size);
  for (let k = size - 1; k >= 0; k--) {
    const column = columns[k] as Float64Array;
    const value = (y[k] as number) / (column[k] as number);
    y[k] = value;
    for (let i = 0; i < k; i++) y[i] = (y[i] as number) - (column[i] as number) * value;
  }
  return y;
}

/** Each dependent column f gives a null vector: 1 at f and −R₁₁⁻¹ r_f at the independent ones. */
function undeterminedOf(
  columns: readonly Float64Array[],
  order: Int32Array,
  rank: number,
): readonly number[] {
  const moved = new Set<number>();
  for (let f = rank; f < columns.length; f++) {
    const shares = solveUpper(columns, columns[f] as Float64Array, rank);
    const largest = shares.reduce((most, share) => Math.max(most, Math.abs(share)), 1);
    moved.add(order[f] as number);
    shares.forEach((share, k) => {
      if (Math.abs(share) > NULL_SHARE * largest) moved.add(order[k] as number);
    });
  }
  return [...moved].sort((a, b) => a - b);
}

function squaredFrom(column: Float64Array, from: number): number {
  let sum = 0;
  for (let r = from; r < column.length; r++) sum += (column[r] as number) ** 2;
  return sum;
}
