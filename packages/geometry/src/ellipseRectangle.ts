import type { PlaneCovariance } from './errorEllipse';

/** Metres from the middle of a rectangle to its sides: `along` a direction and `across` it. */
export type HalfExtents = Readonly<{ along: number; across: number }>;

/**
 * The smallest rectangle along `azimuth` (radians clockwise from +y) that holds `factor` times the standard ellipse of a covariance: its
 * half extent in the direction u is factor·√(uᵀCu), the ellipse's support, which is also `factor` standard deviations of the position
 * in that direction. Hence a rectangle for a 95 % ellipse (factor 2.4477) holds somewhat more than 95 %. Infinite variances give infinite
 * extents. Throws a RangeError unless `factor` is 0 or more and finite.
 */
export function boundingRectangleAlong(
  { sxx, sxy, syy }: PlaneCovariance,
  factor: number,
  azimuth: number,
): HalfExtents {
  if (!(factor >= 0 && factor < Infinity)) throw new RangeError(`boundingRectangleAlong: factor ${factor}`);
  if (sxx === Infinity || syy === Infinity) return { along: Infinity, across: Infinity };
  const halfExtent = (x: number, y: number) =>
    factor * Math.sqrt(Math.max(0, x * x * sxx + 2 * x * y * sxy + y * y * syy));
  const [sin, cos] = [Math.sin(azimuth), Math.cos(azimuth)];
  return { along: halfExtent(sin, cos), across: halfExtent(cos, -sin) };
}
