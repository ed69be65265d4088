import type { Target } from '@footmark/site';
import { select, show } from '../session/workbench';

/** Chooses what stands at a place of the profile; a point of a pipe with its pipe. */
export function chooseStop(target: Target): void {
  show(target);
  if (target.kind === 'path') select(target, target.vertex ?? null);
}
