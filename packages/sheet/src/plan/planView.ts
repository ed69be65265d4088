import type { Bounds } from '@footmark/drawing';
import type { Point } from '@footmark/geometry';
import type { Box, PaperPoint } from '../page/page';

/** A window of a page and the piece of the plan that it shows, true to scale. */
export type PlanView = Readonly<{
  box: Box;
  /** Of the plan (m), its lower left corner at the box's. */
  corner: Point;
  /** Paper mm to a metre: 1:100 is 10. */
  mmPerMetre: number;
}>;

/** The one place where the plan's y (up) becomes the paper's (down). */
export function toPaper({ box, corner, mmPerMetre }: PlanView, p: Point): PaperPoint {
  return {
    x: box.x + (p.x - corner.x) * mmPerMetre,
    y: box.y + box.height - (p.y - corner.y) * mmPerMetre,
  };
}

/** What of the plan (m) a view shows. */
export function shownBounds({ box, corner, mmPerMetre }: PlanView): Bounds {
  return {
    minX: corner.x,
    minY: corner.y,
    maxX: corner.x + box.width / mmPerMetre,
    maxY: corner.y + box.height / mmPerMetre,
  };
}
