import { boundsOf } from '@footmark/drawing';
import { fitView } from '../canvas/planView';
import type { Stop } from './stops';

/** Left about the mark on every side (m), for its hole and what runs through that. */
const ROOM_M = 1.5;

/** Brings a stop into view, whole with its tapes. */
export function showStop({ paint, at, ties }: Stop): void {
  const tapes = ties === null ? [] : [...ties.pair, ...(ties.check === null ? [] : [ties.check])];
  const room = [-ROOM_M, ROOM_M].map((d) => ({ x: at.x + d, y: at.y + d }));
  fitView(boundsOf([paint, ...room, ...tapes.map((tie) => tie.from.at)]));
}
