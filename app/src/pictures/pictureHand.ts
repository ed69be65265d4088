import type { Point } from '@footmark/geometry';
import { changeUnderlay, type Pixel, planToPixel, type Underlay, type UnderlayFit } from '@footmark/site';
import { create } from 'zustand';
import { currentSite, derivedFrom, edit, useSiteSession } from '../session/siteSession';
import { notify, useWorkbench } from '../session/workbench';
import { isInPicture } from './picturePlace';

/** A place of the picture that is marked on the plan while its card is open. */
export type PixelMark = {
  readonly pixel: Pixel;
  readonly label: string;
  /** The plan point that it is fitted to. */
  readonly to?: Point;
};

type PictureHand = {
  /** The picture whose card is open. */
  readonly inHand: string | null;
  /** Takes the next place that is tapped in it; null while no form waits for one. */
  readonly onPixel: ((pixel: Pixel) => void) | null;
  readonly marks: readonly PixelMark[];
  /** While a slider is held: the opacity that it shows. */
  readonly dimmed: number | null;
};

const EMPTY_HAND: PictureHand = { inHand: null, onPixel: null, marks: [], dimmed: null };

/** The picture that is being placed. Not part of the document, not undone. */
export const usePictureHand = create<PictureHand>()(() => EMPTY_HAND);

export function takePicture(id: string | null): void {
  usePictureHand.setState({ ...EMPTY_HAND, inHand: id });
}

/** Lets go of the picture when the person turns to another step, thing or tool, or the picture is gone. Returns what ends it. */
export function letGoOfPictures(): () => void {
  const ends = [
    useWorkbench.subscribe(({ step, selected, group, tool }) => {
      const elsewhere =
        step !== 'yard' ||
        (selected !== null && selected.kind !== 'site') ||
        group.length > 0 ||
        tool !== null;
      if (elsewhere && usePictureHand.getState().inHand !== null) takePicture(null);
    }),
    useSiteSession.subscribe(() => {
      if (usePictureHand.getState().inHand !== null && underlayInHand() === null) takePicture(null);
    }),
  ];
  return () => {
    for (const end of ends) end();
    takePicture(null);
  };
}

/** The picture in hand, if it is in the open site. */
export function underlayInHand(): Underlay | null {
  const { inHand } = usePictureHand.getState();
  const { site } = useSiteSession.getState();
  return site?.underlays.find((u) => u.id === inHand) ?? null;
}

/** Lets the next tap in the picture answer a form. */
export function pickPixel(onPixel: ((pixel: Pixel) => void) | null): void {
  usePictureHand.setState({ onPixel });
}

/** Hands a tapped plan point to the form that waits for a place in the picture; false when none does. */
export function answerPixel(at: Point): boolean {
  const { onPixel } = usePictureHand.getState();
  const underlay = underlayInHand();
  if (onPixel === null || underlay === null) return false;
  const place = derivedFrom(currentSite()).underlays.get(underlay.id);
  const pixel = place && planToPixel(place, at);
  if (pixel === undefined || !isInPicture(underlay, pixel)) {
    notify('That is beside the picture. Tap a place in it.');
    return true;
  }
  usePictureHand.setState({ onPixel: null });
  onPixel(pixel);
  return true;
}

/** The picture in hand while it is dragged: how far (m) it has gone. Read by the painter, changed without a render. */
type PictureDrag = { readonly id: string; readonly from: Point; shift: Point };

let drag: PictureDrag | null = null;

/** Begins to drag the picture in hand if it lies under a plan point and nothing holds it. */
export function startPictureDrag(at: Point): boolean {
  const underlay = underlayInHand();
  if (underlay === null || underlay.locked || !underlay.shown || underlay.fit.by === 'pairs') return false;
  const place = derivedFrom(currentSite()).underlays.get(underlay.id);
  if (place === undefined || !isInPicture(underlay, planToPixel(place, at))) return false;
  drag = { id: underlay.id, from: at, shift: { x: 0, y: 0 } };
  return true;
}

/** Drags on; false when no picture is being dragged. */
export function movePictureDrag(at: Point): boolean {
  if (drag === null) return false;
  drag.shift = { x: at.x - drag.from.x, y: at.y - drag.from.y };
  return true;
}

/** Ends the drag and moves the picture there, as one edit; false when none was being dragged. */
export function endPictureDrag(at: Point): boolean {
  if (!movePictureDrag(at) || drag === null) return false;
  const { id, shift } = drag;
  drag = null;
  const underlay = currentSite().underlays.find((u) => u.id === id);
  if (underlay === undefined) return true;
  edit(`Move ${underlay.name || 'the picture'}`, (site) =>
    changeUnderlay(site, { id, facts: { fit: shiftedFit(underlay.fit, shift) } }),
  );
  return true;
}

export function cancelPictureDrag(): void {
  drag = null;
}

/** How far a picture is away from where the document has it. */
export function draggedBy(id: string): Point | null {
  return drag?.id === id ? drag.shift : null;
}

/** The same fit moved; what is held by pairs stays. */
function shiftedFit(fit: UnderlayFit, { x, y }: Point): UnderlayFit {
  switch (fit.by) {
    case 'finger':
      return { ...fit, middle: { x: fit.middle.x + x, y: fit.middle.y + y } };
    case 'span':
      return { ...fit, at: { x: fit.at.x + x, y: fit.at.y + y } };
    case 'pairs':
      return fit;
  }
}
