import { type Drawing, type MeasureText, placeLabels } from '@footmark/drawing';
import { paintLabels } from './paintLabels';
import { paintPrimitives } from './paintPrimitives';
import { mmPerMetre, type PaintSetting } from './paintSetting';

/** Paints what concerns the things that are dragged: a few lines with their names, which find their places anew in every frame. */
export function paintConcerns(
  concerns: Drawing | null,
  measureText: MeasureText,
  setting: PaintSetting,
): void {
  if (concerns === null) return;
  for (const { primitives } of concerns.layers) paintPrimitives(primitives, setting);
  const labels = concerns.layers.flatMap((layer) => layer.labels);
  paintLabels(placeLabels(labels, [], { mmPerMetre: mmPerMetre(setting.camera), measureText }), setting);
}
