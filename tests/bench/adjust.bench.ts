// Run: npx tsx tests/bench/adjust.bench.ts
// Seeded yards, warm-up, every result summed into a sink that is printed; the ratio is taken in the same run.
import { adjust } from '@footmark/adjust';
import { Matrix, QrDecomposition } from 'ml-matrix';
import { derivativesAt, misclosureAt } from '../../packages/adjust/src/linearize';
import { choleskyFactor, formNormals, solveNormals } from '../../packages/adjust/src/normals';
import { SparseRows } from '../../packages/adjust/src/sparseRows';
import { CHOLESKY_PIVOT } from '../../packages/adjust/src/tolerances';
import { type Network, seededNetwork } from '../adjust/seededNetwork';
import { quantile, tell } from './figures';
import { ranOn, timesOf } from './timing';

/** `targetMs` null: measured only. */
const CASES = [
  { points: 30, count: 200, targetMs: 5, runs: 60 },
  { points: 100, count: 700, targetMs: 40, runs: 20 },
  { points: 300, count: 2100, targetMs: null, runs: 5 },
];
/** Least ratio of the library's QR step to ours. */
const TARGET_RATIO = 10;

const medianMs = (runs: number, work: () => number) =>
  quantile(timesOf(runs, Math.ceil(runs / 2), work), 0.5);

/** What a caller asks for: fit, residuals, tests, suspects, and the covariance block of every point. */
function wholeAdjustment({ estimates, observations }: Network): number {
  const result = adjust({ estimates, observations });
  if (result.status !== 'converged') throw new Error(result.status);
  let sum = result.vTPv + (result.suspects()[0]?.[0].blunder ?? 0);
  for (let at = 0; at < estimates.length; at += 2) sum += result.covarianceBlock(at).xy;
  return sum;
}

/** One linear step at the start values, from weighted rows to the step, by us and by the library's QR. */
function linearSteps({ estimates, observations }: Network) {
  const x = Float64Array.from(estimates);
  const misclosure = new Float64Array(observations.length);
  misclosureAt(observations, x, misclosure);
  const rows = new SparseRows(observations.length, x.length);
  derivativesAt(observations, x, rows);
  const design = Matrix.zeros(rows.rowCount, x.length);
  for (let i = 0; i < rows.rowCount; i++) {
    for (let k = rows.starts[i] ?? 0; k < (rows.starts[i + 1] ?? 0); k++) {
      design.set(i, rows.columns[k] ?? 0, rows.values[k] ?? 0);
    }
  }
  const right = Matrix.columnVector([...misclosure]);
  return {
    ours: (): number[] => {
      const normals = formNormals(rows, misclosure);
      const factor = choleskyFactor(normals, 0, CHOLESKY_PIVOT);
      if (factor === null) throw new Error('the seeded yard is badly conditioned');
      return [...solveNormals(factor, normals)].map((y, i) => y * (normals.scale[i] ?? 0));
    },
    library: (): number[] => new QrDecomposition(design).solve(right).to1DArray(),
  };
}

let met = true;

for (const { points, count, targetMs, runs } of CASES) {
  const yard = seededNetwork(2026, points, count);
  const name = `${2 * points} unknowns x ${count} observations`;

  const whole = medianMs(runs, () => wholeAdjustment(yard));
  const { iterations } = adjust(yard);

  const fitted = adjust(yard);
  if (fitted.status !== 'converged') throw new Error(fitted.status);
  const gradients = [...yard.estimates.keys()].map((unknown) => [{ unknown, derivative: 1 }]);
  const propagated = medianMs(runs, () => fitted.propagate(gradients).length);
  const shared = medianMs(runs, () => fitted.shares(gradients[0] ?? [])[0] ?? 0);
  console.log(
    `${name}: ${iterations} steps; covariance of ${gradients.length} functions ${propagated.toFixed(2)} ms, shares of one ${shared.toFixed(3)} ms`,
  );

  const steps = linearSteps(yard);
  const theirs = steps.library();
  const largest = Math.max(...theirs.map(Math.abs));
  const gap =
    Math.max(...steps.ours().map((value, i) => Math.abs(value - (theirs[i] ?? Number.NaN)))) / largest;
  const ours = medianMs(runs, () => steps.ours()[0] ?? 0);
  const library = medianMs(Math.ceil(runs / 4), () => steps.library()[0] ?? 0);
  const ratio = library / ours;
  console.log(`${name}: the two answers differ by ${gap.toExponential(1)} of the largest (under 1e-9)`);
  met = gap < 1e-9 && met;
  met =
    tell({
      name: `adjustment of ${name}, whole`,
      value: whole,
      unit: 'ms',
      ...(targetMs === null ? {} : { goal: { under: targetMs } }),
      ratio: { to: 'one linear step by ml-matrix QR', times: whole / library },
    }) && met;
  met =
    tell({
      name: `${name}: one linear step, faster than ml-matrix QR by`,
      value: ratio,
      unit: '',
      goal: { atLeast: TARGET_RATIO },
      ratio: null,
    }) && met;
}
console.log(ranOn());
process.exitCode = met ? 0 : 1;
