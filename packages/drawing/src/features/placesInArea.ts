import { distance, nearestOnPolyline, type Point, pointInRing } from '@footmark/geometry';

/** Samples across an area's box each way. */
const SAMPLES = 13;
/** Places offered, and how far apart they are to the size of the area's box. */
const MOST_PLACES = 5;
const APART = 0.12;

/**
 * Roomy places in an area for its name, best first: of a grid of samples inside, those furthest from the outline, and of nearly equal
 * ones those nearest the middle. An area that holds no sample gives its first corner. Throws a RangeError without
 * corners.
 */
export function placesInArea(ring: readonly Point[]): readonly [Point, ...Point[]] {
  const [first] = ring;
  if (first === undefined) throw new RangeError('placesInArea: no corners');
  const xs = ring.map((p) => p.x);
  const ys = ring.map((p) => p.y);
  const [minX, minY] = [Math.min(...xs), Math.min(...ys)];
  const [width, height] = [Math.max(...xs) - minX, Math.max(...ys) - minY];
  const middle = { x: minX + width / 2, y: minY + height / 2 };
  const size = Math.hypot(width, height);
  const samples: { point: Point; score: number }[] = [];
  for (let i = 0; i < SAMPLES; i += 1) {
    for (let j = 0; j < SAMPLES; j += 1) {
      const point = { x: minX + (width * (i + 0.5)) / SAMPLES, y: minY + (height * (j + 0.5)) / SAMPLES };
      if (pointInRing(point, ring) !== 'inside') continue;
      const room = nearestOnPolyline(point, ring, true).distance;
      // rounded, so that rounding errors decide nothing between equals
      const score = Math.round((room - 0.15 * distance(point, middle)) / (1e-9 * size));
      samples.push({ point, score });
    }
  }
  samples.sort((a, b) => b.score - a.score);
  const places: Point[] = [];
  for (const { point } of samples) {
    if (places.every((p) => distance(p, point) >= APART * size)) places.push(point);
    if (places.length === MOST_PLACES) break;
  }
  const [best = first, ...others] = places;
  return [best, ...others];
}
