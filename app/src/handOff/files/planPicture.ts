import type { Drawing } from '@footmark/drawing';
import type { Site } from '@footmark/site';
import { cameraFor } from '../../canvas/camera';
import { paintGrid } from '../../canvas/paintGrid';
import { paintLabels, textMeasurer } from '../../canvas/paintLabels';
import { paintPrimitives } from '../../canvas/paintPrimitives';
import { mmPerMetre, wholePaper } from '../../canvas/paintSetting';
import { palettes } from '../../canvas/palette';
import { labelsAt } from '../../canvas/planScene';

/** The longer side of the picture in CSS pixels, each of them `DENSITY` pixels of the picture wide; and its margin. */
const LONGER = 1400;
const DENSITY = 2;
const MARGIN = 40;
/** No picture is narrower than this share of its length. */
const SLIMMEST = 0.4;

/** The whole plan as a PNG on paper colours; null where the browser gives no canvas, or there is nothing to show. */
export async function planPicture(site: Site, drawing: Drawing): Promise<Blob | null> {
  const { bounds } = drawing;
  if (bounds === null) return null;
  const [wide, high] = [bounds.maxX - bounds.minX, bounds.maxY - bounds.minY];
  const most = Math.max(wide, high);
  const side = (length: number) => Math.round(LONGER * Math.max(SLIMMEST, most > 0 ? length / most : 1));
  const size = { width: side(wide), height: side(high) };
  const canvas = document.createElement('canvas');
  canvas.width = size.width * DENSITY;
  canvas.height = size.height * DENSITY;
  const context = canvas.getContext('2d');
  if (context === null) return null;
  await document.fonts.ready;
  context.scale(DENSITY, DENSITY);
  const camera = cameraFor(bounds, size, { x: MARGIN, y: MARGIN });
  const setting = {
    context,
    camera,
    size,
    region: wholePaper(size),
    palette: palettes.paper,
    density: DENSITY,
  };
  paintGrid(site.units.length !== 'm', setting);
  for (const layer of drawing.layers) paintPrimitives(layer.primitives, setting);
  paintLabels(labelsAt(drawing, mmPerMetre(camera), textMeasurer(context)), setting);
  return await new Promise((resolve) => canvas.toBlob(resolve, 'image/png'));
}
