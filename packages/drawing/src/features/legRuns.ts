import type { Point } from '@footmark/geometry';

/** Legs in a row that are known alike; `closed` only when they go all the way round. */
export type LegRun = Readonly<{ points: readonly Point[]; closed: boolean; measured: boolean }>;

/**
 * Cuts a line at the corners where measured legs meet ones put there by eye, so that each run takes one pen and its dashes go on round the
 * corners. A leg is measured when the vertex at its end is; the closing leg ends at the first.
 */
export function legRuns(
  points: readonly Point[],
  measured: readonly boolean[],
  closed: boolean,
): readonly LegRun[] {
  const count = closed ? points.length : points.length - 1;
  if (count < 1) return [];
  const stateOf = (leg: number) => measured[(leg + 1) % points.length] ?? false;
  const pointAt = (i: number) => points[i % points.length] as Point; // modulo the length of a list that is not empty
  const legs = Array.from({ length: count }, (_, i) => i);
  const first = closed ? legs.findIndex((leg) => stateOf(leg) !== stateOf((leg + count - 1) % count)) : 0;
  if (first < 0) return [{ points, closed: true, measured: stateOf(0) }];
  const runs: LegRun[] = [];
  let begin = first;
  for (let leg = first + 1; leg <= first + count; leg += 1) {
    const ends = leg === first + count || stateOf(leg % count) !== stateOf(begin % count);
    if (!ends) continue;
    const run = Array.from({ length: leg - begin + 1 }, (_, i) => pointAt(begin + i));
    runs.push({ points: run, closed: false, measured: stateOf(begin % count) });
    begin = leg;
  }
  return runs;
}
