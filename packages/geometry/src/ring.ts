import { visitLegs } from './legs';
import { cross, distance, equalPoints, interpolate, type Point, subtract } from './point';
import { intersectSegments, nearestOnSegment } from './segment';
import { COINCIDENT_M } from './tolerances';

// A ring is a list of corners; the leg from the last back to the first is understood and the first is not repeated
// (a repeated one only adds a leg without length and changes no answer).

/**
 * Signed area in square metres, counter-clockwise positive; 0 for fewer than three corners. Loops of a ring
 * that crosses itself cancel.
 */
export function ringArea(ring: readonly Point[]): number {
  const [origin] = ring;
  if (origin === undefined) return 0;
  let twice = 0;
  visitLegs(ring, true, (a, b) => {
    twice += cross(subtract(a, origin), subtract(b, origin));
  });
  return twice / 2;
}

/** Length around, closing leg included, metres. */
export function ringPerimeter(ring: readonly Point[]): number {
  let sum = 0;
  visitLegs(ring, true, (a, b) => {
    sum += distance(a, b);
  });
  return sum;
}

/**
 * Where `p` is with regard to the ring: `edge` within `COINCIDENT_M` of it, else by the even-odd rule. The
 * sense of the ring does not matter. Fewer than three corners have no inside.
 */
export function pointInRing(p: Point, ring: readonly Point[]): 'inside' | 'outside' | 'edge' {
  let onEdge = false;
  let inside = false;
  const [only] = ring;
  if (only !== undefined && ring.length === 1) return equalPoints(p, only) ? 'edge' : 'outside';
  visitLegs(ring, true, (a, b) => {
    if (onEdge || nearestOnSegment(p, a, b).distance <= COINCIDENT_M) {
      onEdge = true;
      return;
    }
    if (a.y > p.y === b.y > p.y) return;
    // The leg passes the height of p: to the right of p exactly when p lies left of the upward leg.
    const side = cross(subtract(b, a), subtract(p, a));
    if (side > 0 === b.y > a.y) inside = !inside;
  });
  if (onEdge) return 'edge';
  return inside ? 'inside' : 'outside';
}

/** The stretch of a segment between two of its parameters, 0 at its start and 1 at its end. */
export type SegmentStretch = Readonly<{ from: number; to: number }>;

/**
 * The stretches of the segment ab that pass through the ring's interior, in order along ab. A stretch counts
 * when it is longer than `COINCIDENT_M` and its middle lies deeper than that inside; so sliding along an edge
 * and touching a corner do not.
 */
export function stretchesInRing(a: Point, b: Point, ring: readonly Point[]): readonly SegmentStretch[] {
  const length = distance(a, b);
  if (length <= COINCIDENT_M) return [];
  const breaks = [0, 1];
  visitLegs(ring, true, (c, d) => {
    const meet = intersectSegments(a, b, c, d, 'included');
    if (meet.kind === 'point') breaks.push(meet.t);
    if (meet.kind === 'overlap') {
      breaks.push(nearestOnSegment(meet.from, a, b).t, nearestOnSegment(meet.to, a, b).t);
    }
  });
  breaks.sort((s, t) => s - t);
  const stretches: SegmentStretch[] = [];
  let from = 0;
  for (const to of breaks) {
    if ((to - from) * length <= COINCIDENT_M) continue;
    if (pointInRing(interpolate(a, b, (from + to) / 2), ring) === 'inside') stretches.push({ from, to });
    from = to;
  }
  return stretches;
}

/** True when a stretch of the segment ab lies in the ring's interior, as `stretchesInRing` counts them. */
export function segmentCrossesRing(a: Point, b: Point, ring: readonly Point[]): boolean {
  return stretchesInRing(a, b, ring).length > 0;
}
