import { azimuthBetween, deflectionBetween, type Point } from '@footmark/geometry';

/** A fitting is drawn no truer than this (rad): a turn of 45 degrees may measure a little more. */
export const DRAWN_TURN_RAD = Math.PI / 180;

/** By how much (rad, positive to the right) a pipe through these points turns at the one of index `i`; null at its ends. */
export function drawnTurn(points: readonly Point[], i: number): number | null {
  const [before, here, after] = [points[i - 1], points[i], points[i + 1]];
  if (before === undefined || here === undefined || after === undefined) return null;
  return deflectionBetween(azimuthBetween(before, here), azimuthBetween(here, after));
}
