/** A micrometre: finer than any measure, coarser than what the order of sums or another machine's sine changes. */
const LENGTH_DECIMALS = 6;

/** A nanoradian: a tenth of a micrometre at the end of a tape. */
const ANGLE_DECIMALS = 9;

export function roundedLength(metres: number): number {
  return Number(metres.toFixed(LENGTH_DECIMALS)) + 0; // + 0 makes −0 into 0
}

/** Numbers without a unit are told to the same digits. */
export function roundedAngle(radians: number): number {
  return Number(radians.toFixed(ANGLE_DECIMALS)) + 0;
}

/** What a finding tells, whose numbers are lengths, angles or neither: all to the finer digits, in lists and parts of it too. */
export function roundedValues<Values>(values: Values): Values {
  if (typeof values === 'number') return roundedAngle(values) as Values; // a number for a number
  if (typeof values !== 'object' || values === null) return values;
  if (Array.isArray(values)) return values.map(roundedValues) as Values; // a list as long
  return Object.fromEntries(Object.entries(values).map(([key, of]) => [key, roundedValues(of)])) as Values; // the same keys
}

/** A place on the plan. */
export function placeReport({ x, y }: { readonly x: number; readonly y: number }) {
  return { x: roundedLength(x), y: roundedLength(y) };
}
