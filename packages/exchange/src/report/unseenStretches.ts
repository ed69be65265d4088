/** A piece of a path between two stations (plan metres, ascending). */
export type StationRange = { readonly from: number; readonly to: number };

/** A gap shorter than this (m) is rounding, not pipe that nobody has seen. */
const SHORTEST_GAP_M = 0.001;

/** What is left of a path of `length` metres between the pieces that were seen, in order. The pieces may overlap. */
export function unseenStretches(length: number, seen: readonly StationRange[]): readonly StationRange[] {
  const gaps: StationRange[] = [];
  let reached = 0;
  for (const { from, to } of seen.toSorted((a, b) => a.from - b.from)) {
    if (from - reached >= SHORTEST_GAP_M) gaps.push({ from: reached, to: from });
    reached = Math.max(reached, to);
  }
  if (length - reached >= SHORTEST_GAP_M) gaps.push({ from: reached, to: length });
  return gaps;
}
