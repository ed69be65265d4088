/** Sides that are cut back by less (horizontal over vertical) are straight. */
const STRAIGHT = 0.05;

export function standStraight(slope: number): boolean {
  return slope < STRAIGHT;
}
