import type { CovarianceBlock } from './adjustment';

/** Half axes in metres (or the unit of the unknowns), `direction` of the longer one in radians anticlockwise from +x, in (−π/2, π/2]. */
export type ErrorEllipse = Readonly<{ semiMajor: number; semiMinor: number; direction: number }>;

/**
 * The standard ellipse of a covariance: half axes √λ (Ghilani, Adjustment Computations, ch. 19). Multiply by
 * `ellipseFactor` for a probability, and by σ0 for a covariance a posteriori. A circle has direction 0.
 */
export function errorEllipse({ xx, xy, yy }: CovarianceBlock): ErrorEllipse {
  const middle = (xx + yy) / 2;
  const reach = Math.hypot((xx - yy) / 2, xy);
  const major = middle + reach;
  // The product of the eigenvalues is the determinant: middle − reach would lose the digits of a thin ellipse.
  const minor = major > 0 ? Math.max(0, (xx * yy - xy * xy) / major) : 0;
  return {
    semiMajor: Math.sqrt(Math.max(0, major)),
    semiMinor: Math.sqrt(minor),
    direction: 0.5 * Math.atan2(2 * xy, xx - yy),
  };
}

/** Standard ellipse → 95 % ellipse when σ0 is known: √χ²(2, 0.95) = √(−2 ln 0.05). */
export const ellipseFactor95 = Math.sqrt(-2 * Math.log(0.05));

/**
 * Standard ellipse → ellipse that holds the point with probability `p` in [0, 1). With `dof`, for an ellipse scaled by a σ0
 * estimated with so many degrees of freedom: √(2 F(p; 2, dof)); without, for a σ0 known. Both have closed forms for two
 * dimensions: χ² = −2 ln(1 − p) and 2F = dof ((1 − p)^(−2/dof) − 1).
 */
export function ellipseFactor(p: number, dof?: number): number {
  if (!(p >= 0 && p < 1)) throw new RangeError(`p is ${p}, must be at least 0 and under 1`);
  if (dof === undefined) return Math.sqrt(-2 * Math.log1p(-p));
  if (!(dof > 0)) throw new RangeError(`dof is ${dof}, must be above 0`);
  return Math.sqrt(dof * Math.expm1((-2 / dof) * Math.log1p(-p)));
}
