import { azimuthBetween, distance, type Point } from '@footmark/geometry';
import type { Ref, Site } from '@footmark/site';
import { directionText, lengthText } from '@footmark/words';
import { pointName } from '../measure/pointChoices';
import type { Landing } from '../tools/tool';
import { planToScreen } from './camera';
import type { InMotion, Overlay } from './overlay';
import type { PaintSetting } from './paintSetting';
import { paintLegLengths, paintRing, paintTag, traceLine } from './paintTag';

/** The points put down so far, the leg to where the pointer is, and why the pointer was drawn there. */
export function paintDraft(
  { tool, draft, site, candidates }: Overlay,
  landing: Landing | null,
  setting: PaintSetting,
): void {
  if (tool === null) return;
  const { context, palette, camera, size } = setting;
  // a leg that is being typed leads where it will end, whatever the pointer does
  const typed = candidates?.other === null ? candidates.chosen : undefined;
  const next = typed ?? landing?.at;
  const ahead = next === undefined ? draft : [...draft, next];
  if (ahead.length > 1) {
    traceLine(ahead, false, setting);
    context.strokeStyle = palette.chosen;
    context.lineWidth = 2.5;
    context.setLineDash([9, 5]);
    context.stroke();
    context.setLineDash([]);
    const closes = tool.is === 'draw' && tool.shape === 'area' && ahead.length > 2;
    // the last two legs, and the side that would close: earlier ones were read when they were drawn
    paintLegLengths(ahead.slice(-3), false, site.units, setting);
    if (closes) {
      const closing = [ahead.at(-1), ahead[0]].flatMap((p) => p ?? []);
      traceLine(closing, false, setting);
      context.lineWidth = 1.5;
      context.setLineDash([2, 6]);
      context.stroke();
      context.setLineDash([]);
      paintLegLengths(closing, false, site.units, setting);
    }
  }
  for (const p of draft) {
    const at = planToScreen(camera, size, p);
    context.beginPath();
    context.arc(at.x, at.y, 5, 0, 2 * Math.PI);
    context.fillStyle = palette.chosen;
    context.fill();
  }
  if (landing !== null && typed === undefined) paintLanding(landing, draft.at(-1), site, setting);
}

function paintLanding(landing: Landing, last: Point | undefined, site: Site, setting: PaintSetting): void {
  const { context, palette, camera, size } = setting;
  const at = planToScreen(camera, size, landing.at);
  if (landing.on === 'ground' || landing.on === 'angle') {
    context.strokeStyle = palette.chosen;
    context.lineWidth = 2;
    for (const [dx, dy] of [
      [12, 0],
      [0, 12],
    ] as const) {
      context.beginPath();
      context.moveTo(at.x - dx, at.y - dy);
      context.lineTo(at.x + dx, at.y + dy);
      context.stroke();
    }
  } else paintRing(landing.at, 12, setting);
  const reason = landingReason(landing, site);
  const leg =
    last === undefined || distance(last, landing.at) === 0
      ? ''
      : `${lengthText(distance(last, landing.at), site.units)}, ${directionText(azimuthBetween(last, landing.at), site.units)}`;
  const text = [reason, leg].filter((part) => part !== '').join(': ');
  if (text !== '') paintTag(text, at, setting);
}

/** How a planned pipe turns where a hand moves it. */
export function paintTurns(turns: InMotion['turns'], setting: PaintSetting): void {
  const { camera, size } = setting;
  for (const { at, degrees } of turns) paintTag(turnReason(degrees), planToScreen(camera, size, at), setting);
}

/** Why the pointer was drawn to where it is, in words; empty for bare ground. */
function landingReason(landing: Landing, site: Site): string {
  const legName = (from: Ref, to: Ref) => `${pointName(site, from)} to ${to.at.toUpperCase()}`;
  switch (landing.on) {
    case 'point':
      return `on ${pointName(site, landing.ref)}`;
    case 'middle':
      return `middle of ${legName(landing.from, landing.to)}`;
    case 'start':
      return 'closes here';
    case 'pipe':
      return 'joins the pipe';
    case 'square':
      return `square to ${legName(landing.from, landing.to)}`;
    case 'line':
      return `on ${legName(landing.from, landing.to)}`;
    case 'extension':
      return `in line with ${legName(landing.from, landing.to)}`;
    case 'angle':
      return turnReason(landing.degrees);
    case 'ground':
      return '';
  }
}

function turnReason(degrees: number | null): string {
  if (degrees === null) return 'with the sheet';
  const turn = Math.round(degrees);
  if (turn === 0) return 'straight on';
  return turn > 0 ? `${turn}° right` : `${-turn}° left`;
}
