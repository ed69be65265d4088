import { planToScreen } from './camera';
import type { PaintSetting } from './paintSetting';
import { paintRing, traceLine } from './paintTag';
import type { FoundPin, PlanPins } from './planPins';

/** Half of the cross on what was found, and the dot where the device is, in pixels. */
const CROSS_PX = 6;
const HERE_PX = 8;

/** Paints where the device is, and what was found. */
export function paintPins({ here, found }: PlanPins, setting: PaintSetting): void {
  for (const pin of found) paintFound(pin, setting);
  if (here === null) return;
  const { context, camera, size, palette } = setting;
  const at = planToScreen(camera, size, here.at);
  context.fillStyle = palette.chosen;
  context.globalAlpha = 0.15;
  context.beginPath();
  context.arc(at.x, at.y, here.accuracy * camera.pxPerMetre, 0, 2 * Math.PI);
  context.fill();
  context.globalAlpha = 1;
  context.beginPath();
  context.arc(at.x, at.y, HERE_PX, 0, 2 * Math.PI);
  context.fill();
  paintRing(here.at, HERE_PX + 4, setting);
}

/** A cross where it was found, and a line from where it was looked for. */
function paintFound({ at, sought }: FoundPin, setting: PaintSetting): void {
  const { context, camera, size, palette } = setting;
  context.strokeStyle = palette.survey;
  context.lineWidth = 2.5;
  if (sought !== null) {
    traceLine([sought, at], false, setting);
    context.stroke();
  }
  const on = planToScreen(camera, size, at);
  context.beginPath();
  context.moveTo(on.x - CROSS_PX, on.y - CROSS_PX);
  context.lineTo(on.x + CROSS_PX, on.y + CROSS_PX);
  context.moveTo(on.x - CROSS_PX, on.y + CROSS_PX);
  context.lineTo(on.x + CROSS_PX, on.y - CROSS_PX);
  context.stroke();
}
