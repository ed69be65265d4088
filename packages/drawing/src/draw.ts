import type { Derived, Site } from '@footmark/site';
import type { Drawing } from './drawing';
import type { DrawOptions } from './drawOptions';
import { drawOutline } from './features/drawOutline';
import { drawPoint } from './features/drawPoint';
import { layerBuilder } from './layerBuilder';
import { drawMarks } from './marks/drawMarks';
import { drawTies } from './marks/drawTies';
import { drawCoverage } from './pipe/drawCoverage';
import { drawPath } from './pipe/drawPath';

/**
 * A site as primitives and labels on layers, the same for every renderer and every scale. Pure. Things without a place are
 * left out, as `derived` says of them. Throws a RangeError for a feature kind whose symbol or line type is not drawn here.
 */
export function draw(site: Site, derived: Derived, options: DrawOptions = {}): Drawing {
  const { words = {}, highlight, dimensions = true } = options;
  const { units } = site;
  const into = layerBuilder();
  for (const feature of derived.features.values()) {
    if (feature.spec.shape === 'point') drawPoint(feature, site, into);
    else drawOutline(feature, units, dimensions, into);
  }
  for (const path of derived.paths.values()) drawPath(path, units, words, dimensions, into);
  drawCoverage(derived, into);
  drawMarks(derived, words, highlight, into);
  const chosen = derived.marks.find(
    (m) => m.run.id === highlight?.mark?.run && m.reading.id === highlight.mark.id,
  );
  if (chosen !== undefined) drawTies(chosen, derived.features, units, into);
  return into.build();
}
