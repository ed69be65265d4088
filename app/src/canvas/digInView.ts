import type { DigDrawing, LayerName } from '@footmark/drawing';
import type { RunsFit, Site, Target } from '@footmark/site';
import { diggingFrom } from '../dig/digging';
import type { Step } from '../session/workbench';

/** Things whose clearances the plan shows while they are in hand. */
const MEASURED: readonly (Target['kind'] | undefined)[] = ['path', 'reading', 'dig', 'feature'];

/** `moves`: the hand is moving what is selected, and what concerns it is painted over the drawing meanwhile. */
export type InHand = { readonly step: Step; readonly selected: Target | null; readonly moves: boolean };

/**
 * What of digs and of what stands in their way the plan shows: planned digs always, root zones in the Route step or of the tree in hand,
 * whose land pipes are on in that step or when one is chosen, clearances of what is chosen. What is not shown or is on a hidden layer is not computed; null where that is all.
 */
export function digInView(
  site: Site,
  fit: RunsFit | null,
  { step, selected, moves }: InHand,
  hidden: ReadonlySet<LayerName>,
): DigDrawing | null {
  const inHand = selected?.kind === 'feature' && !moves ? selected.id : null;
  const showsDigs = site.digging.digs.length > 0 && !hidden.has('excavation');
  const showsZones = (step === 'route' || inHand !== null) && !hidden.has('root-zones');
  const showsClearances = MEASURED.includes(selected?.kind) && !moves && !hidden.has('clearances');
  const showsLand = (step === 'route' || selected?.kind === 'path') && !moves && !hidden.has('land');
  if (!showsDigs && !showsZones && !showsClearances && !showsLand) return null;
  const inTheWay = diggingFrom(site, fit);
  return {
    excavations: showsDigs ? inTheWay.excavations : [],
    treeZones: showsZones
      ? inTheWay.trees.trees.filter(({ tree }) => step === 'route' || tree === inHand)
      : [],
    ...(showsClearances ? { clearances: inTheWay.clearances } : {}),
    ...(showsLand ? { land: inTheWay.land } : {}),
  };
}
