import type { Point } from './point';

/** Corners when no number is asked for: nowhere is the outline further inside than 0.1 % of the longer semi-axis. */
const CORNERS = 72;

/**
 * A ring of `count` points on the ellipse about `at`, counter-clockwise from the end of the major axis; semi-axes in metres, `theta` of
 * the first counter-clockwise from +x, radians. No chord is further than semiMajor·(1 − cos(π/count)) inside. Throws a RangeError for
 * a negative or infinite axis (a point that nothing fixes has no outline) and for fewer than three corners.
 */
export function ellipseOutline(
  at: Point,
  semiMajor: number,
  semiMinor: number,
  theta: number,
  count = CORNERS,
): readonly Point[] {
  if (!(semiMajor >= 0 && semiMinor >= 0 && semiMajor + semiMinor < Infinity)) {
    throw new RangeError(`ellipseOutline: semi-axes ${semiMajor}, ${semiMinor}`);
  }
  if (!(Number.isInteger(count) && count >= 3)) throw new RangeError(`ellipseOutline: count ${count}`);
  const [cos, sin] = [Math.cos(theta), Math.sin(theta)];
  return Array.from({ length: count }, (_, i) => {
    const eccentric = (2 * Math.PI * i) / count;
    const [along, across] = [semiMajor * Math.cos(eccentric), semiMinor * Math.sin(eccentric)];
    return { x: at.x + along * cos - across * sin, y: at.y + along * sin + across * cos };
  });
}
