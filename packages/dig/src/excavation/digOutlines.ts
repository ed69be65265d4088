import { ringArea } from '@footmark/geometry';
import type { DigOutline } from '../clearances/digOutline';
import { middleLine } from './cut';
import type { Excavation } from './excavation';

/**
 * The ground that digs take, as clearances, services and white lines ask for it: one outline for each piece, without ground that is left
 * standing inside one. Of a dig whose depth is not known it is the least that it can be.
 */
export function digOutlines(excavations: readonly Excavation[]): readonly DigOutline[] {
  return excavations.flatMap((excavation) => {
    const { dig, depth, ground } = excavation;
    if (ground === null) return [];
    const along = dig.is === 'trench' ? alongTrench(excavation) : null;
    return ground.outline
      .filter((ring) => ringArea(ring) > 0)
      .map((ring) => ({ id: dig.id, ring, depth: depth?.most ?? null, along }));
  });
}

function alongTrench({ line, bottom, top, cuts: [cut] }: Excavation): DigOutline['along'] {
  if (bottom === null) return null;
  if (top === null || cut === undefined)
    return { line: line.map(({ at }) => at), halfWidth: bottom.width / 2 };
  return { line: middleLine(cut), halfWidth: top.width / 2 };
}
