import type { Point } from '@footmark/geometry';

/** What part of the plan is on the screen. The one place where the plan's y (up) becomes the screen's (down). */
export type Camera = {
  /** Plan point in the middle of the view. */
  readonly centre: Point;
  /** CSS pixels to one metre of plan. */
  readonly pxPerMetre: number;
};

/** Size of a view in CSS pixels. */
export type ViewSize = { readonly width: number; readonly height: number };

/** Bare paper at the sides, and above and below, in CSS pixels. */
export type Margin = { readonly x: number; readonly y: number };

/** CSS pixels to one millimetre of paper: a little above a true millimetre (3.78), as screens are read from further off. */
export const PX_PER_MM = 4.7;

/** From a whole street block on a phone to a hand's breadth on a laptop. */
const SCALE_LIMITS = { least: 0.02, most: 2000 };

export function planToScreen(camera: Camera, size: ViewSize, p: Point): Point {
  return {
    x: size.width / 2 + (p.x - camera.centre.x) * camera.pxPerMetre,
    y: size.height / 2 - (p.y - camera.centre.y) * camera.pxPerMetre,
  };
}

export function screenToPlan(camera: Camera, size: ViewSize, p: Point): Point {
  return {
    x: camera.centre.x + (p.x - size.width / 2) / camera.pxPerMetre,
    y: camera.centre.y - (p.y - size.height / 2) / camera.pxPerMetre,
  };
}

/** Moves the drawing by screen pixels. */
export function pannedBy(camera: Camera, dx: number, dy: number): Camera {
  return {
    ...camera,
    centre: {
      x: camera.centre.x - dx / camera.pxPerMetre,
      y: camera.centre.y + dy / camera.pxPerMetre,
    },
  };
}

/** Scales about a screen point, which keeps its place in the plan. */
export function zoomedAt(camera: Camera, size: ViewSize, about: Point, factor: number): Camera {
  const pxPerMetre = Math.min(SCALE_LIMITS.most, Math.max(SCALE_LIMITS.least, camera.pxPerMetre * factor));
  const held = screenToPlan(camera, size, about);
  const moved = screenToPlan({ ...camera, pxPerMetre }, size, about);
  return {
    pxPerMetre,
    centre: { x: camera.centre.x + held.x - moved.x, y: camera.centre.y + held.y - moved.y },
  };
}

type Box = { readonly minX: number; readonly minY: number; readonly maxX: number; readonly maxY: number };

/** Shows a box whole, with a margin on every side. A box without size is shown about 30 m wide. */
export function cameraFor(box: Box | null, size: ViewSize, margin: Margin): Camera {
  if (box === null) return { centre: { x: 10, y: 10 }, pxPerMetre: Math.max(1, size.width / 40) };
  const free = {
    x: Math.max(1, size.width - 2 * margin.x),
    y: Math.max(1, size.height - 2 * margin.y),
  };
  const wide = Math.max(box.maxX - box.minX, 1);
  const high = Math.max(box.maxY - box.minY, 1);
  const alone = box.maxX - box.minX < 1 && box.maxY - box.minY < 1;
  return {
    centre: { x: (box.minX + box.maxX) / 2, y: (box.minY + box.maxY) / 2 },
    pxPerMetre: alone
      ? Math.min(60, size.width / 30)
      : Math.max(SCALE_LIMITS.least, Math.min(SCALE_LIMITS.most, free.x / wide, free.y / high)),
  };
}
