import type { Point } from '@footmark/geometry';
import { create } from 'zustand';
import { type Camera, cameraFor, type Margin, planToScreen, type ViewSize, zoomedAt } from './camera';
import type { Theme } from './palette';

type Box = { readonly minX: number; readonly minY: number; readonly maxX: number; readonly maxY: number };

type PlanView = {
  /** The camera at rest; null until the first site is shown. */
  readonly camera: Camera | null;
  /** The box that the camera was fitted to and still shows: no hand has moved it since. */
  readonly fitted: Box | null;
  readonly size: ViewSize;
  readonly theme: Theme;
};

/** A mark and its tapes that take less of the view than this are shown nearer. */
const READABLE_SHARE = 0.2;

/** What the plan shows. A gesture in progress is not in here: it comes when the hand rests. */
export const usePlanView = create<PlanView>()(() => ({
  camera: null,
  fitted: null,
  size: { width: 800, height: 600 },
  theme: 'paper',
}));

/** A view narrower than this has its tools in columns on both sides, and each takes so much of it, in pixels. */
const NARROW_PX = 600;
const TOOLS_PX = 64;

/** What the tools cover of a view at its left and at its right, in pixels. */
function covered(size: ViewSize): number {
  return size.width < NARROW_PX ? TOOLS_PX : 0;
}

/** Bare paper left at the sides, and above and below, when a drawing is fitted, in pixels. */
export function fitMargin(size: ViewSize): Margin {
  const paper = Math.min(64, Math.min(size.width, size.height) * 0.13);
  return { x: Math.max(paper, covered(size)), y: paper };
}

/** Shows a box whole. */
export function fitView(box: Box | null): void {
  usePlanView.setState((view) => ({
    camera: cameraFor(box, view.size, fitMargin(view.size)),
    fitted: box,
  }));
}

/** Scales about the middle of the view. */
export function zoomView(factor: number): void {
  usePlanView.setState(({ camera, size }) => ({
    fitted: null,
    camera: camera && zoomedAt(camera, size, { x: size.width / 2, y: size.height / 2 }, factor),
  }));
}

/** Shows a box whole when it is not in the view, or takes less of it than a share that can be read; else leaves the view alone. */
export function frameView(box: Box, readable = READABLE_SHARE): void {
  const { camera, size } = usePlanView.getState();
  if (camera === null) return;
  const wide = (box.maxX - box.minX) * camera.pxPerMetre;
  const high = (box.maxY - box.minY) * camera.pxPerMetre;
  if (!liesInView(box) || Math.max(wide / size.width, high / size.height) < readable) fitView(box);
}

/** Shows a box whole when part of it lies outside of the view; else leaves the view alone. */
export function keepInView(box: Box): void {
  if (!liesInView(box)) fitView(box);
}

function liesInView(box: Box): boolean {
  const { camera, size } = usePlanView.getState();
  if (camera === null) return false;
  const corners = [
    planToScreen(camera, size, { x: box.minX, y: box.minY }),
    planToScreen(camera, size, { x: box.maxX, y: box.maxY }),
  ];
  const aside = covered(size);
  return corners.every((p) => p.x >= aside && p.y >= 0 && p.x <= size.width - aside && p.y <= size.height);
}

/** Moves the view so that a point lies well inside it; the scale stays. */
export function bringIntoView(p: Point): void {
  usePlanView.setState(({ camera, size }) => {
    if (camera === null) return {};
    const free = { x: Math.min(0.4 * size.width, size.width / 2 - covered(size)), y: 0.4 * size.height };
    const inside =
      Math.abs(p.x - camera.centre.x) * camera.pxPerMetre < free.x &&
      Math.abs(p.y - camera.centre.y) * camera.pxPerMetre < free.y;
    return inside ? {} : { camera: { ...camera, centre: p }, fitted: null };
  });
}
