import { normalizeAzimuth, type Point } from '@footmark/geometry';
import type { Pixel } from '@footmark/site';

/** How a picture lies in the plan: where its top left corner is, and the way (m) that one pixel to the right takes there. */
export type PicturePlace = { readonly corner: Point; readonly right: Point };

type SizePx = { readonly widthPx: number; readonly heightPx: number };

/** The plan point of a place in the picture. Pixels count down, the plan counts up: down is `right` turned clockwise. */
export function pixelToPlan({ corner, right }: PicturePlace, { x, y }: Pixel): Point {
  return { x: corner.x + x * right.x + y * right.y, y: corner.y + x * right.y - y * right.x };
}

/** The place in the picture of a plan point, also outside of its edges. `right` must have a length. */
export function planToPixel({ corner, right }: PicturePlace, p: Point): Pixel {
  const square = right.x ** 2 + right.y ** 2;
  const [dx, dy] = [p.x - corner.x, p.y - corner.y];
  return { x: (dx * right.x + dy * right.y) / square, y: (dx * right.y - dy * right.x) / square };
}

/** Whether a pixel lies in the picture, its edges included. */
export function isInPicture({ widthPx, heightPx }: SizePx, { x, y }: Pixel): boolean {
  return x >= 0 && y >= 0 && x <= widthPx && y <= heightPx;
}

/** The corners in the plan, from the top left one clockwise as the picture is seen. */
export function cornersOf(place: PicturePlace, { widthPx, heightPx }: SizePx): readonly Point[] {
  return [
    { x: 0, y: 0 },
    { x: widthPx, y: 0 },
    { x: widthPx, y: heightPx },
    { x: 0, y: heightPx },
  ].map((corner) => pixelToPlan(place, corner));
}

/** Metres to one pixel. */
export function metresPerPixel({ right }: PicturePlace): number {
  return Math.hypot(right.x, right.y);
}

/** Azimuth of the picture's upward edge, radians clockwise from +y in [0, 2π). */
export function upAzimuth({ right }: PicturePlace): number {
  return normalizeAzimuth(Math.atan2(-right.y, right.x)); // up is (−right.y, right.x)
}
