import { type Camera, PX_PER_MM, type ViewSize } from './camera';
import type { Palette } from './palette';

/** A box on the painted paper, CSS pixels, y down. */
export type ScreenBox = {
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
};

/** What a painter needs besides what it paints. */
export type PaintSetting = {
  readonly context: CanvasRenderingContext2D;
  readonly camera: Camera;
  readonly size: ViewSize;
  /** What of the paper is painted, in CSS pixels from its top left: what lies outside of it may be left out. */
  readonly region: ScreenBox;
  readonly palette: Palette;
  /** Device pixels to a CSS pixel. */
  readonly density: number;
};

/** Paper millimetres to one metre of plan at a camera's scale. */
export function mmPerMetre(camera: Camera): number {
  return camera.pxPerMetre / PX_PER_MM;
}

export function wholePaper({ width, height }: ViewSize): ScreenBox {
  return { minX: 0, minY: 0, maxX: width, maxY: height };
}

export function boxesMeet(a: ScreenBox, b: ScreenBox): boolean {
  return a.minX <= b.maxX && a.maxX >= b.minX && a.minY <= b.maxY && a.maxY >= b.minY;
}
