import { distance, nearestOnPolyline, type Point, pointInRing } from '@footmark/geometry';

/** Samples across an area's box each way. */
const SAMPLES = 13;

/**
 * The roomiest place in an area for its name: of a grid of samples inside, the one furthest from the outline, and of nearly
 * equal ones that nearest the middle. An area that holds no sample gives its first corner. Throws a RangeError
 * without corners.
 */
export function centreOfArea(ring: readonly Point[]): Point {
  const [first] = ring;
  if (first === undefined) throw new RangeError('centreOfArea: no corners');
  const xs = ring.map((p) => p.x);
  const ys = ring.map((p) => p.y);
  const [minX, minY] = [Math.min(...xs), Math.min(...ys)];
  const [width, height] = [Math.max(...xs) - minX, Math.max(...ys) - minY];
  const middle = { x: minX + width / 2, y: minY + height / 2 };
  const size = Math.hypot(width, height);
  let best = { point: first, score: -Infinity };
  for (let i = 0; i < SAMPLES; i += 1) {
    for (let j = 0; j < SAMPLES; j += 1) {
      const point = { x: minX + (width * (i + 0.5)) / SAMPLES, y: minY + (height * (j + 0.5)) / SAMPLES };
      if (pointInRing(point, ring) !== 'inside') continue;
      const room = nearestOnPolyline(point, ring, true).distance;
      const score = room - 0.15 * distance(point, middle);
      if (score > best.score + 1e-9 * size) best = { point, score };
    }
  }
  return best.point;
}
