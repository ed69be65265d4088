import { cross, type Point, scale, subtract } from './point';

/** Covariance of a plan position, square metres. */
export type PlaneCovariance = Readonly<{ sxx: number; sxy: number; syy: number }>;

/**
 * Semi-axes of the standard ellipse, metres; `theta` of the major axis counter-clockwise from +x, radians in
 * (−π/2, π/2], 0 for a circle.
 */
export type ErrorEllipse = Readonly<{ semiMajor: number; semiMinor: number; theta: number }>;

/**
 * Covariance of the point `p` taped from `a` and `b` with standard deviations `sigmaA` and `sigmaB`, metres.
 * The taped lengths move with the point by J = the unit vectors from the reference points, so C = J⁻¹
 * diag(σ²) J⁻ᵀ (error propagation, any text on adjustment). Tapes along one line, or a point on its reference
 * point, fix nothing: both variances are Infinity.
 */
export function tapeFixCovariance({
  p,
  a,
  b,
  sigmaA,
  sigmaB,
}: Readonly<{ p: Point; a: Point; b: Point; sigmaA: number; sigmaB: number }>): PlaneCovariance {
  const u = unit(subtract(p, a));
  const v = unit(subtract(p, b));
  const sine = cross(u, v);
  if (sine === 0) return { sxx: Infinity, sxy: 0, syy: Infinity };
  const atA = sigmaA / sine;
  const atB = sigmaB / sine;
  return {
    sxx: (v.y * atA) ** 2 + (u.y * atB) ** 2,
    sxy: -(v.x * v.y * atA ** 2 + u.x * u.y * atB ** 2),
    syy: (v.x * atA) ** 2 + (u.x * atB) ** 2,
  };
}

/**
 * The standard ellipse of a covariance from its eigenvalues (Ghilani, Adjustment Computations, ch. 19). 95 %
 * of a normal error lies within 2.4477 times as much. Rounding below 0 in the minor axis is taken as 0;
 * infinite variances give infinite axes and `theta` 0.
 */
export function errorEllipse({ sxx, sxy, syy }: PlaneCovariance): ErrorEllipse {
  if (sxx === Infinity || syy === Infinity) return { semiMajor: Infinity, semiMinor: Infinity, theta: 0 };
  const mean = (sxx + syy) / 2;
  const half = Math.hypot((sxx - syy) / 2, sxy);
  return {
    semiMajor: Math.sqrt(Math.max(0, mean + half)),
    semiMinor: Math.sqrt(Math.max(0, mean - half)),
    theta: half === 0 ? 0 : Math.atan2(2 * sxy, sxx - syy) / 2,
  };
}

function unit(v: Point): Point {
  const length = Math.hypot(v.x, v.y);
  return length > 0 ? scale(v, 1 / length) : v;
}
