import { boundsOf } from '@footmark/drawing';
import type { Mark } from '@footmark/site';
import { frameView } from '../canvas/planView';
import { select } from '../session/workbench';

/** Selects a mark, and shows it with the points that it is taped from. */
export function showMark(mark: Mark): void {
  select({ kind: 'reading', run: mark.run.id, id: mark.reading.id });
  if (mark.place === null) return;
  const { ties } = mark.place;
  const tapes = ties === null ? [] : [...ties.pair, ...(ties.check === null ? [] : [ties.check])];
  const box = boundsOf([mark.place.at, ...tapes.map((tie) => tie.from.at)]);
  if (box !== null) frameView(box);
}
