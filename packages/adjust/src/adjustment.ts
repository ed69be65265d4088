import type { Solver } from './factor';

/** Variances and covariance of a plane point, square metres (or the squares of its unknowns' units). */
export type CovarianceBlock = Readonly<{ xx: number; xy: number; yy: number }>;

/** A function of the unknowns, by its derivatives at the estimates; those left out are 0, and those of one unknown sum. */
export type Gradient = readonly Readonly<{ unknown: number; derivative: number }>[];

/** vᵀPv against the two-sided chi-square limits: above `upper` something is wrong, below `lower` the sigmas are too wide. */
export type GlobalTest = Readonly<{
  statistic: number;
  lower: number;
  upper: number;
  alpha: number;
  passed: boolean;
}>;

/** An observation whose standardised residual is significant, or which is tied with one. */
export type Suspect = Readonly<{
  id: string;
  index: number;
  standardizedResidual: number;
  /** The error in the observed value that would explain the residual alone: −v / r, in the unit of the observation. */
  blunder: number;
}>;

/**
 * Any one of these, by its blunder, explains the same misfit, and no statistics can tell which: their residuals are correlated
 * through and through, because one condition checks them all. In the order of the observations; one alone where the
 * others tell it apart.
 */
export type SuspectGroup = readonly [Suspect, ...Suspect[]];

type Ended = Readonly<{
  /** One per unknown. */
  estimates: Float64Array;
  /** Adjusted less observed, one per observation; angles in (−π, π]. */
  residuals: Float64Array;
  vTPv: number;
  /** Accepted steps. */
  iterations: number;
}>;

/**
 * Fitted. 'no-redundancy': as many observations as unknowns, so nothing is checked. 'not-converged': the numbers are those
 * of the last step, of use for looking at, not for relying on.
 */
export type Solved = Ended &
  Readonly<{
    status: 'converged' | 'no-redundancy' | 'not-converged';
    /** Which factor the covariance comes from: 'qr' where the normals are badly conditioned. */
    solver: Solver;
    /** Observations less unknowns. */
    dof: number;
    /** Standard deviation of unit weight a posteriori, √(vᵀPv / dof); null without redundancy. */
    sigma0: number | null;
    /** r_i in [0, 1], one per observation; they sum to `dof`. */
    redundancyNumbers: Float64Array;
    /** v / (σ √r), one per observation, with the sigmas a priori; 0 for an observation that no other checks. */
    standardizedResiduals: Float64Array;
    /** Null without redundancy. */
    globalTest: GlobalTest | null;
    /**
     * The observations whose standardised residual is significant at the level `alpha`, in (0, 1), both tails (0.001 when not
     * given), most suspect first, each with those that are tied with it. One blunder shows in other residuals too: look at
     * the first group, put it right, and adjust again. Nothing is ever dropped.
     */
    suspects(alpha?: number): readonly SuspectGroup[];
    /** Covariance of two unknowns a priori (σ0 = 1). Throws when an index is not that of an unknown. */
    covarianceOf(i: number, j: number): number;
    /** Covariance a priori of the point whose unknowns are at `at` and `at + 1`. */
    covarianceBlock(at: number): CovarianceBlock;
    /**
     * Covariance a priori of m functions of the unknowns, m rows of m, in their order; exact for linear ones, to first order for
     * others. Throws a RangeError for an index of no unknown and a derivative that is not finite.
     */
    propagate(gradients: readonly Gradient[]): readonly Float64Array[];
    /**
     * What each observation brings into the variance a priori of a function g: (gᵀ N⁻¹ aᵢ)² for its weighted row aᵢ, the square of
     * what an error of one sigma in it does to g. One per observation; they sum to the variance. Throws as `propagate` does.
     */
    shares(gradient: Gradient): Float64Array;
  }>;

/** The observations leave some unknowns undetermined at the last point; those stay near their start values. */
export type Singular = Ended &
  Readonly<{
    status: 'singular';
    rank: number;
    /** Indices of the unknowns that can move without changing any observation, ascending. */
    undetermined: readonly number[];
  }>;

/** Ended by `shouldStop`, with the estimates of the last step. */
export type Stopped = Ended & Readonly<{ status: 'stopped' }>;

export type Adjustment = Solved | Singular | Stopped;
