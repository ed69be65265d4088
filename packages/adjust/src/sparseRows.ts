// Positions run between row starts that this file keeps, hence `as number` on reads of the typed arrays.
import type { GradientRow } from './observation';

/**
 * The weighted design matrix by rows (compressed sparse rows): row i holds `values[k]` in column `columns[k]` for k from
 * `starts[i]` to `starts[i + 1]`, the end not included. Filled row by row, and refilled without allocation.
 */
export class SparseRows implements GradientRow {
  readonly columnCount: number;
  readonly starts: Int32Array;
  columns: Int32Array;
  values: Float64Array;
  rowCount = 0;
  #end = 0;

  /** `rowLimit` is the number of rows that it can hold. */
  constructor(rowLimit: number, columnCount: number) {
    this.columnCount = columnCount;
    this.starts = new Int32Array(rowLimit + 1);
    this.columns = new Int32Array(6 * rowLimit + 1); // six: three plane points, the most of a built-in observation
    this.values = new Float64Array(6 * rowLimit + 1);
  }

  clear(): void {
    this.rowCount = 0;
    this.#end = 0;
  }

  /** Adds to a column of the open row. Throws when there is no such column. */
  add(column: number, value: number): void {
    if (!Number.isInteger(column) || column < 0 || column >= this.columnCount) {
      throw new RangeError(`derivative by unknown ${column}, which is not the index of an unknown`);
    }
    for (let k = this.starts[this.rowCount] as number; k < this.#end; k++) {
      if (this.columns[k] === column) {
        this.values[k] = (this.values[k] as number) + value;
        return;
      }
    }
    if (this.#end === this.columns.length) this.#grow();
    this.columns[this.#end] = column;
    this.values[this.#end] = value;
    this.#end++;
  }

  /** Closes the open row, its values multiplied by `weightRoot` (1/σ). False when a value is not finite. */
  closeRow(weightRoot: number): boolean {
    let finite = true;
    for (let k = this.starts[this.rowCount] as number; k < this.#end; k++) {
      const value = (this.values[k] as number) * weightRoot;
      this.values[k] = value;
      if (!Number.isFinite(value)) finite = false;
    }
    this.rowCount++;
    this.starts[this.rowCount] = this.#end;
    return finite;
  }

  #grow(): void {
    const columns = new Int32Array(2 * this.columns.length);
    const values = new Float64Array(2 * this.values.length);
    columns.set(this.columns);
    values.set(this.values);
    this.columns = columns;
    this.values = values;
  }
}
