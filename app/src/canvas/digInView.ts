import type { DigDrawing } from '@footmark/drawing';
import type { RunsFit, Site, Target } from '@footmark/site';
import { diggingFrom } from '../dig/digging';
import type { Step } from '../session/workbench';

/**
 * What of digs and of what stands in their way the plan shows: planned digs always, root zones in the Route step or of the tree in hand,
 * clearances of what is chosen. Null, and nothing computed, where that is none of these.
 */
export function digInView(
  site: Site,
  fit: RunsFit | null,
  step: Step,
  selected: Target | null,
): DigDrawing | null {
  const onRoute = step === 'route';
  if (!onRoute && site.digging.digs.length === 0 && (selected === null || selected.kind === 'site'))
    return null;
  const { excavations, trees, clearances } = diggingFrom(site, fit);
  const inHand = selected?.kind === 'feature' ? selected.id : null;
  const treeZones = trees.trees.filter(({ tree }) => onRoute || tree === inHand);
  return { excavations, treeZones, clearances };
}
