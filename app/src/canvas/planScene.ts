import {
  type Drawing,
  draw,
  type Label,
  labelObstacles,
  type MeasureText,
  type PlacedLabel,
  placeLabels,
} from '@footmark/drawing';
import type { Derived, Site, Target } from '@footmark/site';
import { drawingWords } from './drawingWords';

/** The drawing of a site, with the ties of the chosen mark. */
export function drawingOf(site: Site, derived: Derived, selected: Target | null): Drawing {
  const mark = selected?.kind === 'reading' ? { run: selected.run, id: selected.id } : undefined;
  return draw(site, derived, {
    words: drawingWords,
    ...(mark === undefined ? {} : { highlight: { mark } }),
  });
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
