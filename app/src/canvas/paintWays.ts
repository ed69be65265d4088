import { planToScreen } from './camera';
import type { WayOnPlan } from './overlay';
import type { PaintSetting } from './paintSetting';
import { traceLine } from './paintTag';

const WIDTH = { chosen: 5, other: 2.5 };
const RADIUS = 12;

/** Paints ways that are compared: the chosen one over the others, each with its number. */
export function paintWays(ways: readonly WayOnPlan[], setting: PaintSetting): void {
  const ordered = [...ways].sort((a, b) => Number(a.isChosen) - Number(b.isChosen));
  for (const way of ordered) paintWay(way, setting);
  for (const way of ordered) paintNumber(way, setting);
}

function paintWay({ line, isChosen }: WayOnPlan, setting: PaintSetting): void {
  const { context, palette } = setting;
  traceLine(line, false, setting);
  context.lineJoin = 'round';
  context.lineWidth = (isChosen ? WIDTH.chosen : WIDTH.other) + 3;
  context.strokeStyle = palette.paper;
  context.stroke();
  context.lineWidth = isChosen ? WIDTH.chosen : WIDTH.other;
  context.strokeStyle = palette.chosen;
  if (!isChosen) context.setLineDash([8, 6]);
  context.stroke();
  context.setLineDash([]);
}

/** At the middle of the longest leg. */
function paintNumber(
  { line, number, isChosen }: WayOnPlan,
  { context, camera, size, palette }: PaintSetting,
): void {
  let [longest, middle] = [0, line[0]];
  for (const [i, a] of line.entries()) {
    const b = line[i + 1];
    if (b === undefined) break;
    const length = Math.hypot(b.x - a.x, b.y - a.y);
    if (length > longest) [longest, middle] = [length, { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 }];
  }
  if (middle === undefined) return;
  const at = planToScreen(camera, size, middle);
  context.beginPath();
  context.arc(at.x, at.y, RADIUS, 0, 2 * Math.PI);
  context.fillStyle = isChosen ? palette.chosen : palette.paper;
  context.fill();
  context.lineWidth = 2;
  context.strokeStyle = isChosen ? palette.paper : palette.chosen;
  context.stroke();
  context.font = '600 15px Barlow, sans-serif';
  context.textAlign = 'center';
  context.textBaseline = 'middle';
  context.fillStyle = isChosen ? palette.paper : palette.chosen;
  context.fillText(String(number), at.x, at.y + 1);
}
