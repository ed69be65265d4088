import { ringArea } from '@footmark/geometry';
import type { DigOutline } from '../clearances/digOutline';
import { middleLine } from './cut';
import type { Excavation } from './excavation';

/**
 * What digs take at the top, as clearances and services ask for it: one outline for each piece, without ground that is left standing
 * inside one; none where the depth is not known.
 */
export function digOutlines(excavations: readonly Excavation[]): readonly DigOutline[] {
  return excavations.flatMap(({ dig, depth, top, bottom, sides }) => {
    if (top === null || depth === null || bottom === null) return [];
    const cut = { points: top.points, width: bottom.width, slope: sides.slope };
    const along = dig.is === 'trench' ? { line: middleLine(cut), halfWidth: top.width / 2 } : null;
    return top.outline
      .filter((ring) => ringArea(ring) > 0)
      .map((ring) => ({ id: dig.id, ring, depth: depth.most, along }));
  });
}
