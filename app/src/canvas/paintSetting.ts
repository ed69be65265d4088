import { type Camera, PX_PER_MM, type ViewSize } from './camera';
import type { Palette } from './palette';

/** What a painter needs besides what it paints. */
export type PaintSetting = {
  readonly context: CanvasRenderingContext2D;
  readonly camera: Camera;
  readonly size: ViewSize;
  readonly palette: Palette;
  /** Device pixels to a CSS pixel. */
  readonly density: number;
};

/** Paper millimetres to one metre of plan at a camera's scale. */
export function mmPerMetre(camera: Camera): number {
  return camera.pxPerMetre / PX_PER_MM;
}
