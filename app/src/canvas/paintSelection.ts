import type { Point } from '@footmark/geometry';
import { planToScreen } from './camera';
import { type Handle, handlesOf, type Overlay, type Places } from './overlay';
import type { PaintSetting } from './paintSetting';
import { paintLegLengths, paintRing, traceLine } from './paintTag';

const HANDLE_PX = 7;
const ALONE_PX = 15;

/** The chosen things brought out, their handles, and while they are dragged where they would lie. */
export function paintSelection(overlay: Overlay, moved: Places | null, setting: PaintSetting): void {
  const { selected, group, derived } = overlay;
  for (const id of group) paintThing(id, false, overlay, moved, setting);
  if (selected?.kind === 'feature' || selected?.kind === 'path') {
    paintThing(selected.id, true, overlay, moved, setting);
  }
  if (selected?.kind === 'reading') {
    const mark = derived.marks.find((m) => m.reading.id === selected.id);
    if (mark?.place) paintRing(mark.place.paint?.at ?? mark.place.at, 17, setting);
  }
}

function paintThing(
  id: string,
  withHandles: boolean,
  { site, derived, vertex }: Overlay,
  moved: Places | null,
  setting: PaintSetting,
): void {
  const { context, palette, camera, size } = setting;
  const handles = handlesOf(site, derived, id);
  const places = handles.map((h) => moved?.get(h.key)?.at ?? h.at);
  const closed = derived.features.get(id)?.spec.shape === 'area';
  if (places.length > 1) {
    traceLine(places, closed, setting);
    context.strokeStyle = palette.chosen;
    context.lineWidth = moved === null ? 2 : 2.5;
    context.setLineDash(moved === null ? [] : [8, 5]);
    context.stroke();
    context.setLineDash([]);
  }
  if (handles.length === 1 && places[0] !== undefined) paintRing(places[0], ALONE_PX, setting);
  if (withHandles && handles.length > 1) {
    paintLetters(handles, places, closed, setting);
    for (const [i, handle] of handles.entries()) {
      const at = planToScreen(camera, size, places[i] ?? handle.at);
      context.beginPath();
      context.rect(at.x - HANDLE_PX, at.y - HANDLE_PX, 2 * HANDLE_PX, 2 * HANDLE_PX);
      context.fillStyle = handle.vertex === vertex ? palette.chosen : palette.paper;
      context.fill();
      context.strokeStyle = palette.chosen;
      context.lineWidth = 2.25;
      context.stroke();
    }
  }
  if (moved !== null && places.length > 1) paintLegLengths(places, closed, site.units, setting);
}

const LETTER_PX = 18;

/** The letters by which the card calls the points, outside the outline or beside the line. */
function paintLetters(
  handles: readonly Handle[],
  places: readonly Point[],
  closed: boolean,
  setting: PaintSetting,
): void {
  const { context, palette, camera, size } = setting;
  const on = places.map((p) => planToScreen(camera, size, p));
  const middle = {
    x: on.reduce((sum, p) => sum + p.x, 0) / on.length,
    y: on.reduce((sum, p) => sum + p.y, 0) / on.length,
  };
  context.font = '600 15px Barlow, sans-serif';
  context.textAlign = 'center';
  context.textBaseline = 'middle';
  for (const [i, handle] of handles.entries()) {
    const at = on[i];
    if (at === undefined) continue;
    const away = Math.hypot(at.x - middle.x, at.y - middle.y) || 1;
    const out = closed ? { x: (at.x - middle.x) / away, y: (at.y - middle.y) / away } : { x: 0.8, y: -0.6 };
    const text = handle.vertex.toUpperCase();
    const spot = { x: at.x + out.x * LETTER_PX, y: at.y + out.y * LETTER_PX };
    context.lineWidth = 4;
    context.strokeStyle = palette.halo;
    context.strokeText(text, spot.x, spot.y);
    context.fillStyle = palette.chosen;
    context.fillText(text, spot.x, spot.y);
  }
}
