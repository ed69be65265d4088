/** In two dimensions 68 % of a circular normal distribution lie within √(−2·ln 0.32) standard deviations of one axis. */
const RADIUS_68_IN_SIGMAS = Math.sqrt(-2 * Math.log(0.32));

/** Standard deviation (m) of each axis, from the radius (m) within which a device says that it is with 68 %. */
export function accuracySigma(radius: number): number {
  return radius / RADIUS_68_IN_SIGMAS;
}
