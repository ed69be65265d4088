import type { Adjustment, CovarianceBlock, Gradient, Solved } from './adjustment';
import { covarianceColumn, type Factor, redundancyNumbers } from './factor';
import { iterate } from './iterate';
import { checkProblem, type Problem } from './problem';
import { propagate, shares } from './propagation';
import { standardizeResiduals, testGlobally } from './quality';
import { findSuspects } from './suspects';
import { CHOLESKY_PIVOT, GLOBAL_ALPHA, MAX_ITERATIONS, STEP, SUSPECT_ALPHA } from './tolerances';

export type AdjustOptions = Readonly<{
  /** Level of the global test, both tails together, in (0, 1). */
  alpha?: number;
  /** Steps before it ends as 'not-converged'. */
  maxIterations?: number;
  /**
   * Step, in standard deviations of each unknown with the others held, under which the iteration has arrived (1e-8). Where the
   * observations bend strongly and the residuals are large, each step takes only a share off the last, and fewer digits are reached sooner.
   */
  stepTolerance?: number;
  /** Scaled pivot under which the QR takes over from Cholesky; anything above 1 always takes the QR. */
  choleskyPivot?: number;
  /** Asked before every step; true ends as 'stopped'. For a limit of time, or a caller that has lost interest. */
  shouldStop?: () => boolean;
}>;

/**
 * Weighted non-linear least squares: the unknowns that minimise Σ (v/σ)², v adjusted less observed, for independent
 * observations. Every end but a programmer's mistake is a status of the result; a mistake (a value that is not finite, a
 * sigma of 0, an index of no unknown) throws a RangeError that names it.
 * Source: Gauss–Markov model as in any text (Ghilani, Adjustment Computations); checked against worked examples in `tests/`.
 */
export function adjust(problem: Problem, options: AdjustOptions = {}): Adjustment {
  checkProblem(problem);
  const { observations } = problem;
  const ended = iterate(problem, {
    maxIterations: options.maxIterations ?? MAX_ITERATIONS,
    choleskyPivot: options.choleskyPivot ?? CHOLESKY_PIVOT,
    stepTolerance: options.stepTolerance ?? STEP,
    shouldStop: options.shouldStop ?? (() => false),
  });
  const { x: estimates, vTPv, iterations, determined } = ended;
  const residuals = Float64Array.from(observations, ({ sigma }, i) => -(ended.misclosure[i] ?? 0) * sigma);
  if (determined === null) return { status: 'stopped', estimates, residuals, vTPv, iterations };
  if (!determined.ok) {
    const { rank, undetermined } = determined;
    return { status: 'singular', estimates, residuals, vTPv, iterations, rank, undetermined };
  }
  const { factor } = determined;
  const { rows } = ended;
  const dof = observations.length - estimates.length;
  const redundancy = redundancyNumbers(factor, rows);
  const checks = {
    redundancyNumbers: redundancy,
    standardizedResiduals: standardizeResiduals(observations, residuals, redundancy),
  };
  return {
    status: statusOf(ended.converged, dof),
    solver: factor.solver,
    estimates,
    residuals,
    vTPv,
    iterations,
    dof,
    sigma0: dof === 0 ? null : Math.sqrt(vTPv / dof),
    ...checks,
    globalTest: testGlobally(vTPv, dof, options.alpha ?? GLOBAL_ALPHA),
    suspects: (alpha = SUSPECT_ALPHA) =>
      findSuspects({ observations, residuals, ...checks, factor, rows }, alpha),
    ...covarianceAccess(factor),
    propagate: (gradients: readonly Gradient[]) => propagate(factor, gradients),
    shares: (gradient: Gradient) => shares(factor, rows, gradient),
  };
}

function statusOf(converged: boolean, dof: number): Solved['status'] {
  if (!converged) return 'not-converged';
  return dof === 0 ? 'no-redundancy' : 'converged';
}

/** Covariance columns are solved when first asked for, and kept. */
function covarianceAccess(factor: Factor): Pick<Solved, 'covarianceOf' | 'covarianceBlock'> {
  const columns = new Map<number, Float64Array>();
  const covarianceOf = (i: number, j: number): number => {
    // The column of the smaller index, so that (i, j) and (j, i) agree to the last bit.
    const index = Math.min(i, j);
    let column = columns.get(index);
    if (column === undefined) {
      if (factor.position[index] === undefined)
        throw new RangeError(`covariance of unknown ${index}: no such unknown`);
      column = covarianceColumn(factor, index);
      columns.set(index, column);
    }
    const value = column[Math.max(i, j)];
    if (value === undefined) throw new RangeError(`covariance of unknown ${Math.max(i, j)}: no such unknown`);
    return value;
  };
  const covarianceBlock = (at: number): CovarianceBlock => ({
    xx: covarianceOf(at, at),
    xy: covarianceOf(at, at + 1),
    yy: covarianceOf(at + 1, at + 1),
  });
  return { covarianceOf, covarianceBlock };
}
