// Indices run over the unknowns, hence `as number` on reads of the typed arrays.
import type { Factor } from './factor';
import { derivativesAt, misclosureAt } from './linearize';
import { choleskyFactor, formNormals, type Normals, solveNormals } from './normals';
import { type PivotedQr, solvePivotedQr } from './pivotedQr';
import type { Problem } from './problem';
import { SparseRows } from './sparseRows';
import {
  COST_ROUNDING,
  DAMPED_PIVOT,
  DAMPING_CEILING,
  DAMPING_FLOOR,
  DAMPING_START,
  SHORT_STEP,
  STEP_ROUNDING,
} from './tolerances';

/** Where the iteration ended, with everything linearised there. */
export type Iteration = Readonly<{
  x: Float64Array;
  converged: boolean;
  iterations: number;
  rows: SparseRows;
  /** Observed less computed, over σ. */
  misclosure: Float64Array;
  vTPv: number;
  /** The undamped normals at `x`, factored, or what they leave undetermined; null when it was stopped. */
  determined: Determined | null;
}>;

export type Determined =
  | Readonly<{ ok: true; factor: Factor }>
  | Readonly<{ ok: false; rank: number; undetermined: readonly number[] }>;

export type IterateLimits = Readonly<{
  maxIterations: number;
  choleskyPivot: number;
  stepTolerance: number;
  shouldStop: () => boolean;
}>;

type Step = Readonly<{ scaled: Float64Array; damping: number }>;

/**
 * Gauss–Newton steps; one that does not reduce vᵀPv is taken again with Levenberg–Marquardt damping of the scaled normals,
 * ten times more each time, and ten times less after a step that does. Where the undamped normals are singular the least
 * damping stays on, so that the unknowns which nothing determines keep their start values.
 * (Levenberg 1944, Marquardt 1963; the schedule is common practice.)
 */
export function iterate({ estimates, observations }: Problem, limits: IterateLimits): Iteration {
  let x = Float64Array.from(estimates);
  let misclosure = new Float64Array(observations.length);
  let trial = misclosure.slice();
  let vTPv = misclosureAt(observations, x, misclosure);
  if (!Number.isFinite(vTPv)) throw undefinedAtStart(observations, misclosure);
  const rows = new SparseRows(observations.length, x.length);

  let damping = 0;
  let singular = false;
  let converged = false;
  let iterations = 0;
  let lastWorth = Number.POSITIVE_INFINITY;
  while (!converged && iterations < limits.maxIterations) {
    if (limits.shouldStop()) return { x, converged, iterations, rows, misclosure, vTPv, determined: null };
    derivativesAt(observations, x, rows);
    const normals = formNormals(rows, misclosure);
    let advanced = false;
    while (!advanced && damping < DAMPING_CEILING) {
      let step = takeStep(rows, misclosure, normals, damping, limits);
      if (step === null) {
        singular = true;
        damping = DAMPING_FLOOR;
        step = takeStep(rows, misclosure, normals, damping, limits);
        if (step === null) break;
      }
      const moved = x.map((value, i) => value + (step.scaled[i] as number) * (normals.scale[i] as number));
      const cost = misclosureAt(observations, moved, trial);
      // What the step is worth by the linear model: its squared length in standard deviations. For a short full step the sums
      // may not tell better from worse: it is taken, and the end is where such steps no longer get shorter.
      const worth = decrease(step, normals);
      const short = damping <= DAMPING_FLOOR && worth <= SHORT_STEP ** 2 * Math.max(1, vTPv);
      if (cost <= vTPv * (1 + COST_ROUNDING) || (short && Number.isFinite(cost))) {
        converged =
          (damping <= DAMPING_START && isSmall(step, x, normals, limits.stepTolerance)) ||
          (short && worth >= lastWorth);
        lastWorth = short ? worth : Number.POSITIVE_INFINITY;
        advanced = true;
        x = moved;
        vTPv = cost;
        [misclosure, trial] = [trial, misclosure];
        damping = damping / 10 < DAMPING_FLOOR ? (singular ? DAMPING_FLOOR : 0) : damping / 10;
      } else {
        damping = Math.max(DAMPING_START, damping * 10);
      }
    }
    if (!advanced) break;
    iterations++;
  }

  derivativesAt(observations, x, rows);
  const determined = factorAt(rows, misclosure, limits);
  return { x, converged, iterations, rows, misclosure, vTPv, determined };
}

/** The Cholesky factor of the normals, or the QR's where Cholesky is not exact enough. */
function factorAt(rows: SparseRows, misclosure: Float64Array, limits: IterateLimits): Determined {
  const factor = choleskyFactor(formNormals(rows, misclosure), 0, limits.choleskyPivot);
  return factor === null ? solvePivotedQr(rows, misclosure) : { ok: true, factor };
}

/** The scaled step; null when it is undamped and the normals are singular. */
function takeStep(
  rows: SparseRows,
  misclosure: Float64Array,
  normals: Normals,
  damping: number,
  limits: IterateLimits,
): Step | null {
  const factor = choleskyFactor(normals, damping, damping > 0 ? DAMPED_PIVOT : limits.choleskyPivot);
  if (factor !== null) return { scaled: solveNormals(factor, normals), damping };
  const qr: PivotedQr = solvePivotedQr(rows, misclosure);
  return qr.ok ? { scaled: qr.step, damping } : null;
}

/** Decrease of vᵀPv by the linear model: yᵀg + λ yᵀy for a step y under damping λ. */
function decrease({ scaled, damping }: Step, { right }: Normals): number {
  let sum = 0;
  scaled.forEach((y, i) => {
    sum += y * ((right[i] as number) + damping * y);
  });
  return sum;
}

function isSmall({ scaled }: Step, x: Float64Array, { scale }: Normals, tolerance: number): boolean {
  return scaled.every((y, i) => {
    const size = Math.abs(y);
    return size <= tolerance || size * (scale[i] as number) <= STEP_ROUNDING * Math.abs(x[i] as number);
  });
}

function undefinedAtStart(observations: Problem['observations'], misclosure: Float64Array): RangeError {
  const index = misclosure.findIndex((value) => !Number.isFinite(value));
  return new RangeError(`observation "${observations[index]?.id}": not finite at the start values`);
}
