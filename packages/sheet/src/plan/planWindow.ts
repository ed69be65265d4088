import type { Drawing, PlacedLabel } from '@footmark/drawing';
import type { WindowItem } from '../page/page';
import type { SheetSetting } from '../setting';
import { paintLabels } from './paintLabels';
import { paintPrimitives } from './paintPrimitives';
import type { PlanView } from './planView';

/** A piece of plan in its window: lines first, then its texts. */
export function planWindow(
  { layers }: Drawing,
  placed: readonly PlacedLabel[],
  view: PlanView,
  { inks, lettering }: SheetSetting,
): WindowItem {
  const primitives = layers.flatMap((layer) => layer.primitives);
  return {
    is: 'window',
    box: view.box,
    items: [...paintPrimitives(primitives, view, inks), ...paintLabels(placed, view, inks, lettering)],
  };
}
