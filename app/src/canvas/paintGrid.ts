import { FOOT_M } from '@footmark/site';
import { screenToPlan } from './camera';
import type { PaintSetting } from './paintSetting';

/** Steps of the grid in the site's unit: the first that leaves lines at least this far apart is drawn. */
const LEAST_GAP_PX = 26;
const STRONG_PX = 1.4;
const STEPS = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000];

/** Metres between grid lines at a scale, whole feet or whole metres. */
function gridStep(pxPerMetre: number, inFeet: boolean): number {
  const unit = inFeet ? FOOT_M : 1;
  const step = STEPS.find((s) => s * unit * pxPerMetre >= LEAST_GAP_PX) ?? 1000;
  return step * unit;
}

/** The drawing paper: its ground and a faint square grid, every fifth line a little stronger. */
export function paintGrid(inFeet: boolean, setting: PaintSetting): void {
  const { context, camera, size, palette, region } = setting;
  const { minX, minY, maxX, maxY } = region;
  context.fillStyle = palette.ground;
  context.fillRect(minX, minY, maxX - minX, maxY - minY);
  const step = gridStep(camera.pxPerMetre, inFeet);
  // a line whose middle lies beside the region can reach into it by its half
  const topLeft = screenToPlan(camera, size, { x: minX - STRONG_PX, y: minY - STRONG_PX });
  const bottomRight = screenToPlan(camera, size, { x: maxX + STRONG_PX, y: maxY + STRONG_PX });
  context.strokeStyle = palette.grid;
  const lines = (from: number, to: number, draw: (at: number) => void) => {
    for (let i = Math.ceil(from / step); i * step <= to; i++) {
      context.lineWidth = i % 5 === 0 ? STRONG_PX : 0.6;
      context.beginPath();
      draw(i * step);
      context.stroke();
    }
  };
  lines(topLeft.x, bottomRight.x, (x) => {
    const at = size.width / 2 + (x - camera.centre.x) * camera.pxPerMetre;
    context.moveTo(at, 0);
    context.lineTo(at, size.height);
  });
  lines(bottomRight.y, topLeft.y, (y) => {
    const at = size.height / 2 - (y - camera.centre.y) * camera.pxPerMetre;
    context.moveTo(0, at);
    context.lineTo(size.width, at);
  });
}
