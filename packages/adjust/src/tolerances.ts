/** The solver's tolerances and limits, each with its unit and reason. 'Scaled' means columns of unit weighted length. */

/** Scaled pivot of the normals under which Cholesky would lose more than half of the digits: the QR takes over. */
export const CHOLESKY_PIVOT = 1e-8;

/** Scaled pivot that a damped factor must keep; damping puts at least `DAMPING_FLOOR` on every pivot. */
export const DAMPED_PIVOT = 1e-14;

/** Scaled diagonal of R under which a column depends on the others (a pivot of 1e-20 in the normals). */
export const RANK = 1e-10;

/** Share of the largest entry of a null vector above which an unknown counts as moved by it. */
export const NULL_SHARE = 1e-6;

/** Step, in standard deviations of each unknown with the others held, under which the iteration has arrived. */
export const STEP = 1e-8;

/** Step relative to the unknown, under which it is rounding (a few units in the last place). */
export const STEP_ROUNDING = 1e-15;

/**
 * Length of a full step, in standard deviations or as a share of √vᵀPv, whichever is longer, whose effect on vᵀPv may drown
 * in rounding.
 */
export const SHORT_STEP = 1e-5;

/** Relative change of the weighted sum of squares that is rounding, not a decrease or an increase. */
export const COST_ROUNDING = 1e-14;

/** Damping that a first refused step brings in, relative to the unit diagonal. */
export const DAMPING_START = 1e-3;

/** Damping under which it is dropped, or kept at where the undamped normals are singular. */
export const DAMPING_FLOOR = 1e-6;

/** Damping at which the step is nothing: no direction reduces the sum of squares. */
export const DAMPING_CEILING = 1e12;

/** Redundancy number under which an observation is checked by no other, so its residual says nothing. */
export const UNCHECKED = 1e-9;

/** Accepted steps before the iteration gives up; well-posed networks take 3 to 6. */
export const MAX_ITERATIONS = 50;

/** Level of the global test, both tails together (the customary 5 %). */
export const GLOBAL_ALPHA = 0.05;

/** Level at which one observation is called a suspect, both tails: 0.1 % (Baarda's customary level; from memory). */
export const SUSPECT_ALPHA = 0.001;

/**
 * Correlation of two residuals from which a blunder in one shows alike in both: of 4 standard deviations it is the other that
 * comes out larger in Φ(−4 √((1 − 0.99)/2)) = 39 of 100 cases (Förstner's separability; from memory).
 */
export const TIED_CORRELATION = 0.99;

/** Difference of two squared standardised residuals that does not decide between them: odds of three to one, 2 ln 3. */
export const TIED_EVIDENCE = 2 * Math.log(3);

/** The same as a share of the larger, where that is more: the rounding of a huge residual or of a small redundancy number. */
export const TIED_ROUNDING = 1e-5;
