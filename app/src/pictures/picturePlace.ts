import { normalizeAzimuth, type Point } from '@footmark/geometry';
import { type DerivedUnderlay, type Pixel, pixelToPlan } from '@footmark/site';

/** How a picture lies in the plan. */
export type PicturePlace = Pick<DerivedUnderlay, 'toPlan'>;

type SizePx = { readonly widthPx: number; readonly heightPx: number };

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

/** Azimuth of the picture's upward edge, radians clockwise from +y in [0, 2π). */
export function upAzimuth({ toPlan: { a, b } }: PicturePlace): number {
  return normalizeAzimuth(Math.atan2(-b, a)); // one pixel up is (−b, a)
}

/** The place after the picture was moved by metres. */
export function shiftedPlace({ toPlan }: PicturePlace, by: Point): PicturePlace {
  return { toPlan: { ...toPlan, tx: toPlan.tx + by.x, ty: toPlan.ty + by.y } };
}
