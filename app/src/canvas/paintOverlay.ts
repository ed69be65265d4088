import { stationText } from '@footmark/drawing';
import { locate } from '@footmark/geometry';
import type { PipePlace } from '../profile/profilePointer';
import type { Candidates } from '../session/picking';
import { planToScreen } from './camera';
import type { InMotion, Marquee, Overlay } from './overlay';
import { paintDraft, paintTurns } from './paintDraft';
import { paintPins } from './paintPins';
import { paintSelection } from './paintSelection';
import type { PaintSetting } from './paintSetting';
import { paintRing, paintTag } from './paintTag';
import { paintWays } from './paintWays';

/** Paints what lies over the drawing. */
export function paintOverlay(overlay: Overlay, motion: InMotion, setting: PaintSetting): void {
  paintSelection(overlay, motion.moved, setting);
  paintDraft(overlay, motion.landing, setting);
  paintTurns(motion.turns, setting);
  paintWays(overlay.ways, setting);
  paintPins(overlay.pins, setting);
  paintCandidates(overlay.candidates, setting);
  if (motion.marquee !== null) paintMarquee(motion.marquee, setting);
  if (motion.pointer !== null) paintPointer(motion.pointer, overlay, setting);
}

/** The place that the profile shows, with its station. */
function paintPointer({ path, station }: PipePlace, { site, derived }: Overlay, setting: PaintSetting): void {
  const line = derived.paths.get(path)?.line;
  if (line === undefined) return;
  const { point } = locate(line, station);
  const at = planToScreen(setting.camera, setting.size, point);
  setting.context.beginPath();
  setting.context.arc(at.x, at.y, 4, 0, 2 * Math.PI);
  setting.context.fillStyle = setting.palette.chosen;
  setting.context.fill();
  paintRing(point, 11, setting);
  paintTag(stationText(station, site.units), at, setting);
}

function paintCandidates(candidates: Candidates | null, setting: PaintSetting): void {
  if (candidates === null) return;
  const { context, camera, size, palette } = setting;
  const at = planToScreen(camera, size, candidates.chosen);
  context.beginPath();
  context.arc(at.x, at.y, 7, 0, 2 * Math.PI);
  context.fillStyle = palette.chosen;
  context.fill();
  paintTag('here', at, setting);
  if (candidates.other === null) return;
  context.setLineDash([4, 4]);
  paintRing(candidates.other, 9, setting);
  context.setLineDash([]);
  paintTag('or here', planToScreen(camera, size, candidates.other), setting);
}

function paintMarquee({ from, to }: Marquee, { context, camera, size, palette }: PaintSetting): void {
  const [a, b] = [planToScreen(camera, size, from), planToScreen(camera, size, to)];
  context.strokeStyle = palette.chosen;
  context.lineWidth = 1.5;
  context.setLineDash([6, 4]);
  context.strokeRect(a.x, a.y, b.x - a.x, b.y - a.y);
  context.setLineDash([]);
  context.globalAlpha = 0.08;
  context.fillStyle = palette.chosen;
  context.fillRect(a.x, a.y, b.x - a.x, b.y - a.y);
  context.globalAlpha = 1;
}
