/** A micrometre: finer than any measure, coarser than what the order of sums or another machine's sine changes. */
const LENGTH_DECIMALS = 6;

/** A nanoradian: a tenth of a micrometre at the end of a tape. */
const ANGLE_DECIMALS = 9;

export function roundedLength(metres: number): number {
  return Number(metres.toFixed(LENGTH_DECIMALS)) + 0; // + 0 makes −0 into 0
}

export function roundedAngle(radians: number): number {
  return Number(radians.toFixed(ANGLE_DECIMALS)) + 0;
}
