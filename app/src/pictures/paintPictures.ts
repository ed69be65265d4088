import type { Point } from '@footmark/geometry';
import { type Derived, pixelToPlan, type Site, type Underlay } from '@footmark/site';
import { planToScreen } from '../canvas/camera';
import type { PaintSetting } from '../canvas/paintSetting';
import { draggedBy, underlayInHand, usePictureHand } from './pictureHand';
import { pictureImage, useArrivedPictures } from './pictureImages';
import { cornersOf, type PicturePlace, shiftedPlace } from './picturePlace';

/** What of a picture stays visible of itself while a ghost of it is dragged. */
const GHOST_OPACITY = 0.5;
const MARK_PX = 9;

/** Makes a component render when pictures have to be painted anew. */
export function usePictureChanges(): readonly [arrived: unknown, inHand: unknown] {
  return [useArrivedPictures(), usePictureHand()];
}

/** Paints the pictures of a site that are shown, the first at the bottom. */
export function paintPictures(site: Site, derived: Derived, setting: PaintSetting): void {
  const { inHand, dimmed } = usePictureHand.getState();
  for (const underlay of site.underlays) {
    const place = derived.underlays.get(underlay.id);
    if (!underlay.shown || place === undefined) continue;
    const opacity = underlay.id === inHand && dimmed !== null ? dimmed : underlay.opacity;
    paintPicture(underlay, place, opacity, setting);
  }
}

/** Paints over the drawing what belongs to the picture in hand: its edges, its marked places, and its ghost while it is dragged. */
export function paintPictureInHand(derived: Derived, setting: PaintSetting): void {
  const underlay = underlayInHand();
  const lies = underlay && derived.underlays.get(underlay.id);
  if (!underlay || !lies) return;
  const shift = draggedBy(underlay.id);
  const place = shift === null ? lies : shiftedPlace(lies, shift);
  if (shift !== null) paintPicture(underlay, place, underlay.opacity * GHOST_OPACITY, setting);
  paintEdges(underlay, place, setting);
  for (const { pixel, label, to } of usePictureHand.getState().marks) {
    const at = planToScreen(setting.camera, setting.size, pixelToPlan(place, pixel));
    if (to !== undefined) paintMiss(at, planToScreen(setting.camera, setting.size, to), setting);
    paintMark(at, label, setting);
  }
}

function paintPicture(
  underlay: Underlay,
  place: PicturePlace,
  opacity: number,
  { context, camera, size }: PaintSetting,
): void {
  const image = pictureImage(underlay.file);
  if (image?.is !== 'ready') return;
  const { a, b, tx, ty } = place.toPlan;
  const corner = planToScreen(camera, size, { x: tx, y: ty });
  // one pixel to the right, in pixels of the screen, whose y counts down
  const [across, down] = [a * camera.pxPerMetre, -b * camera.pxPerMetre];
  const onScreen = Math.hypot(across, down) * underlay.widthPx;
  const bitmap = onScreen <= image.reduced.width ? image.reduced : image.whole;
  context.save();
  context.globalAlpha = opacity;
  context.transform(across, down, -down, across, corner.x, corner.y);
  context.drawImage(bitmap, 0, 0, underlay.widthPx, underlay.heightPx);
  context.restore();
}

function paintEdges(underlay: Underlay, place: PicturePlace, setting: PaintSetting): void {
  const { context, camera, size, palette } = setting;
  context.beginPath();
  for (const [i, corner] of cornersOf(place, underlay).entries()) {
    const at = planToScreen(camera, size, corner);
    if (i === 0) context.moveTo(at.x, at.y);
    else context.lineTo(at.x, at.y);
  }
  context.closePath();
  context.strokeStyle = palette.chosen;
  context.lineWidth = 2;
  context.setLineDash(underlay.locked || underlay.fit.by === 'pairs' ? [] : [8, 5]);
  context.stroke();
  context.setLineDash([]);
}

/** From where a place of the picture falls to the point that it should fall on. */
function paintMiss(at: Point, to: Point, { context, palette }: PaintSetting): void {
  context.beginPath();
  context.moveTo(at.x, at.y);
  context.lineTo(to.x, to.y);
  context.arc(to.x, to.y, 3, 0, 2 * Math.PI);
  context.strokeStyle = palette.chosen;
  context.lineWidth = 2;
  context.stroke();
}

/** A cross with a letter beside it, on a halo that keeps it apart from the picture. */
function paintMark(at: Point, label: string, { context, palette }: PaintSetting): void {
  context.beginPath();
  context.moveTo(at.x - MARK_PX, at.y);
  context.lineTo(at.x + MARK_PX, at.y);
  context.moveTo(at.x, at.y - MARK_PX);
  context.lineTo(at.x, at.y + MARK_PX);
  context.lineCap = 'round';
  for (const [style, width] of [
    [palette.halo, 6],
    [palette.chosen, 2.5],
  ] as const) {
    context.strokeStyle = style;
    context.lineWidth = width;
    context.stroke();
  }
  context.font = '600 15px Barlow, sans-serif';
  context.textAlign = 'left';
  context.textBaseline = 'alphabetic';
  context.lineJoin = 'round';
  context.strokeStyle = palette.halo;
  context.lineWidth = 5;
  context.strokeText(label, at.x + 7, at.y - 7);
  context.fillStyle = palette.chosen;
  context.fillText(label, at.x + 7, at.y - 7);
}
