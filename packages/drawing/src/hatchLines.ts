import { type Point, rotate } from '@footmark/geometry';
import { PEN } from './lineTypes';

/** Diagonal hatching on paper: at 45°, rising to the right. */
export const HATCH = { spacing: 2.2, weight: PEN.hair, turn: Math.PI / 4 } as const;

/** Lines in one hatched area: beyond it they are spaced wider. */
const MOST_LINES = 4000;

/**
 * Hatching of a ring at a scale, as segments (metres), by the even-odd rule. Lines stand on a grid of the whole plan, so
 * that neighbours match and nothing swims when a corner moves.
 */
export function hatchLines(ring: readonly Point[], mmPerMetre: number): readonly (readonly [Point, Point])[] {
  const level = ring.map((p) => rotate(p, -HATCH.turn));
  const heights = level.map((p) => p.y);
  const [low, high] = [Math.min(...heights), Math.max(...heights)];
  if (!(high > low)) return [];
  const spacing = Math.max(HATCH.spacing / mmPerMetre, (high - low) / MOST_LINES);
  const segments: (readonly [Point, Point])[] = [];
  for (let k = Math.ceil(low / spacing); k * spacing < high; k += 1) {
    const y = k * spacing;
    const crossings = level.flatMap((a, i) => {
      const b = level[(i + 1) % level.length] ?? a;
      return a.y > y === b.y > y ? [] : a.x + ((y - a.y) / (b.y - a.y)) * (b.x - a.x);
    });
    crossings.sort((a, b) => a - b);
    for (let i = 0; i + 1 < crossings.length; i += 2) {
      const [from, to] = [crossings[i] ?? 0, crossings[i + 1] ?? 0];
      segments.push([rotate({ x: from, y }, HATCH.turn), rotate({ x: to, y }, HATCH.turn)]);
    }
  }
  return segments;
}
