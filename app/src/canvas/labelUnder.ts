import type { PlacedLabel } from '@footmark/drawing';
import type { Point } from '@footmark/geometry';
import type { Target } from '@footmark/site';
import { type Camera, PX_PER_MM, planToScreen, type ViewSize } from './camera';

/** A finger's breadth more than the letters take up, in pixels. */
const MARGIN_PX = 6;

/** What a label under a press is about: a thing, or the leg of it that ends at a vertex. */
export type LabelHit =
  | { readonly is: 'thing'; readonly target: Target }
  | { readonly is: 'leg'; readonly target: Target; readonly end: string };

/** The label under a press, if it is about something. */
export function labelUnder(
  labels: readonly PlacedLabel[],
  camera: Camera,
  size: ViewSize,
  at: Point,
): LabelHit | null {
  for (const { label, at: centre, azimuth, widthMm, heightMm } of labels) {
    const { target } = label;
    if (target === undefined || target.kind === 'site') continue;
    const on = planToScreen(camera, size, centre);
    const turn = azimuth - Math.PI / 2;
    const [dx, dy] = [at.x - on.x, at.y - on.y];
    const along = dx * Math.cos(turn) + dy * Math.sin(turn);
    const across = -dx * Math.sin(turn) + dy * Math.cos(turn);
    if (Math.abs(along) > (widthMm * PX_PER_MM) / 2 + MARGIN_PX) continue;
    if (Math.abs(across) > (heightMm * PX_PER_MM) / 2 + MARGIN_PX) continue;
    const end = /\/leg\/([^/]+)$/.exec(label.id)?.[1];
    return end === undefined ? { is: 'thing', target } : { is: 'leg', target: withoutVertex(target), end };
  }
  return null;
}

function withoutVertex(target: Target): Target {
  return target.kind === 'feature' || target.kind === 'path' ? { kind: target.kind, id: target.id } : target;
}
