import type { Point } from '@footmark/geometry';

/** An axis-aligned box in the plan. */
export type Bounds = {
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
};

/** The box around some points; for none, a box that nothing is near to. */
export function boundsOf(points: readonly Point[]): Bounds {
  let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const p of points) {
    minX = Math.min(minX, p.x);
    minY = Math.min(minY, p.y);
    maxX = Math.max(maxX, p.x);
    maxY = Math.max(maxY, p.y);
  }
  return { minX, minY, maxX, maxY };
}

/** Distance (m) from a point to a box, 0 inside: never more than to anything in it. */
export function distanceToBounds(p: Point, box: Bounds): number {
  const dx = Math.max(box.minX - p.x, 0, p.x - box.maxX);
  const dy = Math.max(box.minY - p.y, 0, p.y - box.maxY);
  return Math.sqrt(dx * dx + dy * dy); // several times faster than hypot, and asked for every mark and feature
}

/** Distance (m) from a point inside a box to its edge: no point is deeper inside anything within the box. */
export function depthInBounds(p: Point, box: Bounds): number {
  return Math.min(p.x - box.minX, box.maxX - p.x, p.y - box.minY, box.maxY - p.y);
}

/** Whether the box around the segment a–b and the box have a point in common. */
export function segmentMeetsBounds(a: Point, b: Point, box: Bounds): boolean {
  return (
    Math.max(a.x, b.x) >= box.minX &&
    Math.min(a.x, b.x) <= box.maxX &&
    Math.max(a.y, b.y) >= box.minY &&
    Math.min(a.y, b.y) <= box.maxY
  );
}
