import { ringArea } from '@footmark/geometry';
import type { DigOutline } from '../clearances/digOutline';
import type { Excavation } from './excavation';

/**
 * What digs take at the top, as clearances and services ask for it: one outline for each piece, without ground that is left standing
 * inside one; none where the depth is not known.
 */
export function digOutlines(excavations: readonly Excavation[]): readonly DigOutline[] {
  return excavations.flatMap(({ dig, path, line, depth, top }) => {
    const [first, last] = [line[0], line.at(-1)];
    if (top === null || depth === null || path === null || first === undefined || last === undefined)
      return [];
    const along =
      dig.is === 'trench' ? { path, from: first.station, to: last.station, halfWidth: top.width / 2 } : null;
    return top.outline
      .filter((ring) => ringArea(ring) > 0)
      .map((ring) => ({ id: dig.id, ring, depth: depth.most, along }));
  });
}
