import type { Mark } from '@footmark/site';
import { select } from '../session/workbench';
import { frameTapes } from './frameTapes';

/** Selects a mark, and shows it with the points that it is taped from. */
export function showMark(mark: Mark): void {
  select({ kind: 'reading', run: mark.run.id, id: mark.reading.id });
  if (mark.place !== null) frameTapes(mark.place);
}
