import { lengthAlongArc, pointsOnArc, segmentArea } from './arc';
import { visitLegs } from './legs';
import { distance, type Point } from './point';
import { ringArea } from './ring';

// A line of straight legs and arcs: its corners, and for each leg the sweep of its arc (see arc.ts), 0 or absent for a straight
// one. Leg i runs from corner i to the next; in a ring the last leg runs back to the first corner.

/**
 * The corners with points on the arcs between them, none further than `maxSagitta` metres from the arc while `MOST_CHORDS`
 * for each are enough. The very corners are kept;
 * without an arc the result is `corners` itself.
 */
export function flattenArcs(
  corners: readonly Point[],
  sweeps: readonly number[],
  closed: boolean,
  maxSagitta: number,
): readonly Point[] {
  if (sweeps.every((sweep) => sweep === 0)) return corners;
  const last = corners.length - 1;
  return corners.flatMap((corner, i) => {
    const next = i < last ? corners[i + 1] : closed ? corners[0] : undefined;
    const sweep = sweeps[i] ?? 0;
    return next === undefined || sweep === 0
      ? [corner]
      : [corner, ...pointsOnArc(corner, next, sweep, maxSagitta)];
  });
}

/** Signed area in square metres of a ring of legs and arcs, exact; counter-clockwise positive. */
export function arcRingArea(corners: readonly Point[], sweeps: readonly number[]): number {
  let area = ringArea(corners);
  visitLegs(corners, true, (a, b, leg) => {
    const sweep = sweeps[leg] ?? 0;
    // an arc that turns right lies left of its chord: on the inner side of a counter-clockwise ring
    area -= Math.sign(sweep) * segmentArea(distance(a, b), sweep);
  });
  return area;
}

/** Length in metres around a ring of legs and arcs. */
export function arcRingPerimeter(corners: readonly Point[], sweeps: readonly number[]): number {
  let sum = 0;
  visitLegs(corners, true, (a, b, leg) => {
    sum += lengthAlongArc(distance(a, b), sweeps[leg] ?? 0);
  });
  return sum;
}
