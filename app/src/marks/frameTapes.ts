import { boundsOf } from '@footmark/drawing';
import type { Point } from '@footmark/geometry';
import type { Ties } from '@footmark/site';
import { frameView } from '../canvas/planView';

/** Shows a place with the points that it is taped from. */
export function frameTapes({ at, ties }: { readonly at: Point; readonly ties: Ties | null }): void {
  const tapes = ties === null ? [] : [...ties.pair, ...(ties.check === null ? [] : [ties.check])];
  const box = boundsOf([at, ...tapes.map((tie) => tie.from.at)]);
  if (box !== null) frameView(box);
}
