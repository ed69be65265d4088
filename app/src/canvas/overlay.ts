import type { Point } from '@footmark/geometry';
import { type Derived, formatLength, refKey, type Target, type Units } from '@footmark/site';
import type { Candidates } from '../session/picking';
import type { Landing, Tool } from '../tools/tool';
import { planToScreen } from './camera';
import type { PaintSetting } from './paintPrimitives';

/** What lies over the drawing: the chosen thing and its handles, what is in hand, and where the next press would land. */
export type Overlay = {
  readonly derived: Derived;
  readonly units: Units;
  readonly selected: Target | null;
  readonly vertex: string | null;
  readonly tool: Tool | null;
  /** Places of the draft's points so far. */
  readonly draft: readonly Point[];
  /** Where the pointer is, and on what; null when there is none. */
  readonly landing: Landing | null;
  /** The places that a measuring form allows. */
  readonly candidates: Candidates | null;
  /** While dragging: new places by `of/at`. */
  readonly moved: ReadonlyMap<string, Point> | null;
};

const HANDLE_PX = 7;

/** The points of the chosen thing that can be held, where they are now. */
export function handlesOf(
  derived: Derived,
  selected: Target | null,
): readonly { at: Point; vertex: string; key: string }[] {
  if (selected?.kind === 'feature') {
    const found = derived.features.get(selected.id);
    return (found?.feature.vertices ?? []).map((v, i) => ({
      at: found?.points[i] ?? { x: 0, y: 0 },
      vertex: v.id,
      key: refKey({ of: selected.id, at: v.id }),
    }));
  }
  if (selected?.kind === 'path') {
    const found = derived.paths.get(selected.id);
    return (found?.path.vertices ?? []).map((v, i) => ({
      at: found?.points[i] ?? { x: 0, y: 0 },
      vertex: v.id,
      key: refKey({ of: selected.id, at: v.id }),
    }));
  }
  return [];
}

export function paintOverlay(overlay: Overlay, setting: PaintSetting): void {
  paintSelection(overlay, setting);
  paintDraft(overlay, setting);
  paintCandidates(overlay.candidates, setting);
}

function paintCandidates(candidates: Candidates | null, setting: PaintSetting): void {
  if (candidates === null) return;
  const { context, camera, size, palette } = setting;
  const at = planToScreen(camera, size, candidates.chosen);
  context.beginPath();
  context.arc(at.x, at.y, 7, 0, 2 * Math.PI);
  context.fillStyle = palette.chosen;
  context.fill();
  tag('here', at, setting);
  if (candidates.other === null) return;
  const other = planToScreen(camera, size, candidates.other);
  context.setLineDash([4, 4]);
  ring(candidates.other, 9, setting);
  context.setLineDash([]);
  tag('or here', other, setting);
}

function paintSelection({ derived, selected, vertex, moved, units }: Overlay, setting: PaintSetting): void {
  const { context, palette, camera, size } = setting;
  const handles = handlesOf(derived, selected);
  const places = handles.map((h) => moved?.get(h.key) ?? h.at);
  const closed = selected?.kind === 'feature' && derived.features.get(selected.id)?.spec.shape === 'area';
  if (places.length > 1) {
    trace(places, closed, setting);
    context.strokeStyle = palette.chosen;
    context.lineWidth = moved === null ? 2 : 2.5;
    context.setLineDash(moved === null ? [] : [8, 5]);
    context.stroke();
    context.setLineDash([]);
  }
  for (const [i, handle] of handles.entries()) {
    const place = places[i];
    if (place === undefined) continue;
    const at = planToScreen(camera, size, place);
    const inHand = handle.vertex === vertex || handles.length === 1;
    context.beginPath();
    if (handles.length === 1) context.arc(at.x, at.y, 15, 0, 2 * Math.PI);
    else context.rect(at.x - HANDLE_PX, at.y - HANDLE_PX, 2 * HANDLE_PX, 2 * HANDLE_PX);
    if (handles.length > 1) {
      context.fillStyle = inHand ? palette.chosen : palette.paper;
      context.fill();
    }
    context.strokeStyle = palette.chosen;
    context.lineWidth = 2.25;
    context.stroke();
  }
  if (moved !== null && places.length > 1) paintLegLengths(places, closed === true, units, setting);
  if (selected?.kind === 'reading') {
    const mark = derived.marks.find((m) => m.reading.id === selected.id);
    if (mark?.place) ring(mark.place.at, 17, setting);
  }
}

function paintDraft({ tool, draft, landing, derived, units }: Overlay, setting: PaintSetting): void {
  if (tool === null) return;
  const { context, palette, camera, size } = setting;
  const ahead = landing === null ? draft : [...draft, landing.at];
  if (ahead.length > 1) {
    trace(ahead, false, setting);
    context.strokeStyle = palette.chosen;
    context.lineWidth = 2.5;
    context.setLineDash([9, 5]);
    context.stroke();
    context.setLineDash([]);
    paintLegLengths(ahead, tool.shape === 'area' && ahead.length > 2, units, setting);
  }
  for (const p of draft) {
    const at = planToScreen(camera, size, p);
    context.beginPath();
    context.arc(at.x, at.y, 5, 0, 2 * Math.PI);
    context.fillStyle = palette.chosen;
    context.fill();
  }
  if (landing === null) return;
  const at = planToScreen(camera, size, landing.at);
  context.strokeStyle = palette.chosen;
  context.lineWidth = 2;
  if (landing.on === 'ground') {
    for (const [dx, dy] of [
      [1, 0],
      [0, 1],
    ] as const) {
      context.beginPath();
      context.moveTo(at.x - 12 * dx, at.y - 12 * dy);
      context.lineTo(at.x + 12 * dx, at.y + 12 * dy);
      context.stroke();
    }
    return;
  }
  ring(landing.at, 12, setting);
  tag(snapReason(landing, derived), at, setting);
}

/** Why the pointer was drawn to where it is. */
function snapReason(landing: Landing, derived: Derived): string {
  if (landing.on === 'leg') return 'joins the pipe here';
  if (landing.on === 'ground') return '';
  const feature = derived.features.get(landing.ref.of)?.feature;
  const path = derived.paths.get(landing.ref.of)?.path;
  const name = feature?.name || path?.name || landing.ref.of;
  const points = (feature ?? path)?.vertices.length ?? 1;
  return points > 1 ? `on ${name} ${landing.ref.at.toUpperCase()}` : `on ${name}`;
}

function paintLegLengths(
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
    if (length * camera.pxPerMetre < 40) continue;
    const mid = planToScreen(camera, size, { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 });
    tag(formatLength(length, units.length), { x: mid.x - 12, y: mid.y + 2 }, setting);
  }
}

function tag(text: string, at: Point, { context, palette }: PaintSetting): void {
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

function ring(p: Point, radius: number, { context, camera, size, palette }: PaintSetting): void {
  const at = planToScreen(camera, size, p);
  context.beginPath();
  context.arc(at.x, at.y, radius, 0, 2 * Math.PI);
  context.strokeStyle = palette.chosen;
  context.lineWidth = 2.25;
  context.stroke();
}

function trace(points: readonly Point[], closed: boolean, { context, camera, size }: PaintSetting): void {
  context.beginPath();
  for (const [i, p] of points.entries()) {
    const at = planToScreen(camera, size, p);
    if (i === 0) context.moveTo(at.x, at.y);
    else context.lineTo(at.x, at.y);
  }
  if (closed) context.closePath();
}
