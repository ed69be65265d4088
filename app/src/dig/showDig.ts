import { type Bounds, boundsOf } from '@footmark/drawing';
import { frameView } from '../canvas/planView';
import { currentFit } from '../fit/fitSession';
import { currentSite } from '../session/siteSession';
import { show } from '../session/workbench';
import { diggingFrom } from './digging';

/** Of its larger side. */
const ROOM = 0.3;
/** Of the view: what is written beside a dig is much. */
const READABLE = 0.6;

/** Takes a planned dig in hand, and shows it whole and near enough to be read. */
export function showDig(id: string): void {
  show({ kind: 'dig', id });
  frameDig(id);
}

/** Shows a dig whole; leaves the view alone where it is so already, or has no place. */
export function frameDig(id: string): void {
  const { excavations } = diggingFrom(currentSite(), currentFit().fit);
  const dug = excavations.find((e) => e.dig.id === id);
  const box = boundsOf((dug?.ground?.outline ?? []).flat());
  if (box !== null) frameView(withRoom(box), READABLE);
}

/** Room round it for what is written beside it. */
function withRoom({ minX, minY, maxX, maxY }: Bounds): Bounds {
  const room = ROOM * Math.max(maxX - minX, maxY - minY);
  return { minX: minX - room, minY: minY - room, maxX: maxX + room, maxY: maxY + room };
}
