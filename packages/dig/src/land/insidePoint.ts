import { type Point, pointInRing, ringArea } from '@footmark/geometry';

/** A place within a ring, well away from its edge where it can be: the middle of the widest piece at half its height. */
export function insidePoint(ring: readonly Point[]): Point | null {
  if (ringArea(ring) === 0) return null;
  const ys = ring.map((p) => p.y);
  const y = (Math.min(...ys) + Math.max(...ys)) / 2 + 1e-7 * (Math.max(...ys) - Math.min(...ys));
  const cuts = ring.flatMap((a, i) => {
    const b = ring[i + 1] ?? ring[0];
    if (b === undefined || a.y > y === b.y > y) return [];
    return [a.x + ((y - a.y) / (b.y - a.y)) * (b.x - a.x)];
  });
  cuts.sort((s, t) => s - t);
  let widest: Point | null = null;
  let width = 0;
  for (let i = 0; i + 1 < cuts.length; i++) {
    const [from = 0, to = 0] = [cuts[i], cuts[i + 1]];
    const middle = { x: (from + to) / 2, y };
    if (to - from <= width || pointInRing(middle, ring) !== 'inside') continue;
    width = to - from;
    widest = middle;
  }
  return widest;
}
