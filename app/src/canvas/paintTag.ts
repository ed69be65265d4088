import type { Point } from '@footmark/geometry';
import type { Units } from '@footmark/site';
import { lengthText } from '@footmark/words';
import { planToScreen } from './camera';
import type { PaintSetting } from './paintSetting';

/** Legs shorter than this on the screen get no length. */
const SHORTEST_TAGGED_PX = 40;

/** A word beside a place on the screen. */
export function paintTag(text: string, at: Point, { context, palette }: PaintSetting): void {
  context.font = '600 14px Barlow, sans-serif';
  context.textAlign = 'left';
  context.textBaseline = 'middle';
  const width = context.measureText(text).width;
  context.fillStyle = palette.chosen;
  context.beginPath();
  context.roundRect(at.x + 14, at.y - 27, width + 14, 22, 4);
  context.fill();
  context.fillStyle = palette.paper;
  context.fillText(text, at.x + 21, at.y - 15.5);
}

/** A ring about a place of the plan; its radius in pixels. */
export function paintRing(p: Point, radius: number, { context, camera, size, palette }: PaintSetting): void {
  const at = planToScreen(camera, size, p);
  context.beginPath();
  context.arc(at.x, at.y, radius, 0, 2 * Math.PI);
  context.strokeStyle = palette.chosen;
  context.lineWidth = 2.25;
  context.stroke();
}

/** The lengths of the legs between points, each at its middle. */
export function paintLegLengths(
  points: readonly Point[],
  closed: boolean,
  units: Units,
  setting: PaintSetting,
): void {
  const { camera, size } = setting;
  for (const [i, a] of points.entries()) {
    const b = points[i + 1] ?? (closed ? points[0] : undefined);
    if (b === undefined) continue;
    const length = Math.hypot(b.x - a.x, b.y - a.y);
    if (length * camera.pxPerMetre < SHORTEST_TAGGED_PX) continue;
    const mid = planToScreen(camera, size, { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 });
    paintTag(lengthText(length, units), { x: mid.x - 12, y: mid.y + 2 }, setting);
  }
}

/** Begins a path through points of the plan. */
export function traceLine(points: readonly Point[], closed: boolean, setting: PaintSetting): void {
  const { context, camera, size } = setting;
  context.beginPath();
  for (const [i, p] of points.entries()) {
    const at = planToScreen(camera, size, p);
    if (i === 0) context.moveTo(at.x, at.y);
    else context.lineTo(at.x, at.y);
  }
  if (closed) context.closePath();
}
