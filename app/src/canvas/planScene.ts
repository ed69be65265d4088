import {
  type Drawing,
  draw,
  type Label,
  type LayerName,
  labelObstacles,
  type MeasureText,
  type PlacedLabel,
  placeLabels,
} from '@footmark/drawing';
import type { Derived, Site, Target } from '@footmark/site';
import { drawingWords } from './drawingWords';

/** The drawing of a site, with the ties of the chosen mark, without the layers that are hidden. */
export function drawingOf(
  site: Site,
  derived: Derived,
  selected: Target | null,
  hidden: ReadonlySet<LayerName>,
): Drawing {
  const mark = selected?.kind === 'reading' ? { run: selected.run, id: selected.id } : undefined;
  const drawing = draw(site, derived, {
    words: drawingWords,
    ...(mark === undefined ? {} : { highlight: { mark } }),
  });
  if (hidden.size === 0) return drawing;
  return { ...drawing, layers: drawing.layers.filter((layer) => !hidden.has(layer.name)) };
}

/** Labels of all layers placed for a scale. */
export function labelsAt(
  drawing: Drawing,
  mmPerMetre: number,
  measureText: MeasureText,
): readonly PlacedLabel[] {
  const labels: Label[] = drawing.layers.flatMap((layer) => layer.labels);
  return placeLabels(labels, labelObstacles(drawing, mmPerMetre), { mmPerMetre, measureText });
}
