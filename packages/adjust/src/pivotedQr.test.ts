import { expect, it } from 'vitest';
import { covarianceColumn } from './factor';
import { choleskyFactor, formNormals, solveNormals } from './normals';
import { solvePivotedQr } from './pivotedQr';
import { SparseRows } from './sparseRows';

function rowsOf(dense: readonly (readonly number[])[]): SparseRows {
  const rows = new SparseRows(dense.length, dense[0]?.length ?? 0);
  for (const row of dense) {
    row.forEach((value, column) => {
      if (value !== 0) rows.add(column, value);
    });
    rows.closeRow(1);
  }
  return rows;
}

// A line through (0, 1), (1, 3), (2, 4), (3, 4): by hand, intercept 1.5, slope 1, Qxx = [[.7, −.3], [−.3, .2]].
const line = rowsOf([
  [1, 0],
  [1, 1],
  [1, 2],
  [1, 3],
]);
const heights = Float64Array.of(1, 3, 4, 4);

it('fits a line as worked by hand, and Cholesky does the same', () => {
  const qr = solvePivotedQr(line, heights);
  const normals = formNormals(line, heights);
  const cholesky = choleskyFactor(normals, 0, 1e-8);
  if (!qr.ok || cholesky === null) return expect.unreachable();
  for (const [factor, step] of [
    [qr.factor, qr.step],
    [cholesky, solveNormals(cholesky, normals)],
  ] as const) {
    expect((step[0] ?? 0) * (factor.scale[0] ?? 0)).toBeCloseTo(1.5, 13);
    expect((step[1] ?? 0) * (factor.scale[1] ?? 0)).toBeCloseTo(1, 13);
    expect(covarianceColumn(factor, 0)[0]).toBeCloseTo(0.7, 13);
    expect(covarianceColumn(factor, 0)[1]).toBeCloseTo(-0.3, 13);
    expect(covarianceColumn(factor, 1)[1]).toBeCloseTo(0.2, 13);
  }
});

it('names the columns of a dependence, and not the others', () => {
  // Column 3 = column 0 + 2 · column 2.
  const rows = rowsOf([
    [1, 0, 0, 1],
    [0, 1, 0, 0],
    [0, 0, 1, 2],
    [1, 1, 1, 3],
    [2, 0, 1, 4],
  ]);
  expect(solvePivotedQr(rows, new Float64Array(5))).toEqual({ ok: false, rank: 3, undetermined: [0, 2, 3] });
  expect(choleskyFactor(formNormals(rows, new Float64Array(5)), 0, 1e-8)).toBeNull();
});

it('sums derivatives that are added to one column twice', () => {
  const rows = new SparseRows(1, 2);
  rows.add(1, 2);
  rows.add(1, 3);
  expect(rows.closeRow(0.5)).toBe(true);
  expect([...rows.values.subarray(0, rows.starts[1])]).toEqual([2.5]);
  expect(() => rows.add(2, 1)).toThrow('unknown 2');
});
