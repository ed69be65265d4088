import { normalizeAzimuth, type Point } from '@footmark/geometry';

/** A direction in which legs run: unit vectors ahead and to the right. `key`: the same for headings that are the same but for rounding. */
export type Direction = {
  readonly key: number;
  readonly heading: number;
  readonly ahead: Point;
  readonly right: Point;
};

/** Steps of a heading (rad) that count as one. */
const STEP_RAD = 1e-7;

export function directionOf(heading: number): Direction {
  const whole = Math.round(normalizeAzimuth(heading) / STEP_RAD) % Math.round((2 * Math.PI) / STEP_RAD);
  const [sin, cos] = [Math.sin(heading), Math.cos(heading)];
  return { key: whole, heading, ahead: { x: sin, y: cos }, right: { x: cos, y: -sin } };
}
