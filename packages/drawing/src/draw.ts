import type { Derived, Locate, Site } from '@footmark/site';
import { drawDigs } from './dig/drawDigs';
import type { Drawing } from './drawing';
import type { DrawOptions, Highlight } from './drawOptions';
import { drawOutline } from './features/drawOutline';
import { drawPoint } from './features/drawPoint';
import { drawFitted } from './fitted/drawFitted';
import { layerBuilder } from './layerBuilder';
import { drawContinuous } from './marks/drawContinuous';
import { drawLocates } from './marks/drawLocates';
import { drawMarks } from './marks/drawMarks';
import { drawSetOut } from './marks/drawSetOut';
import { drawMarkTies } from './marks/drawTies';
import { isChosen } from './marks/isChosen';
import { drawCoverage } from './pipe/drawCoverage';
import { drawPath } from './pipe/drawPath';
import { drawReach } from './zones/drawReach';
import { drawZones } from './zones/drawZones';

/** A locate that is further off (m) from where the sonde was computed says so by itself. */
const TELLING_OFF_M = 0.3;

/**
 * A site as primitives and labels on layers, the same for every renderer and every scale. Pure. Things without a place are
 * left out, as `derived` says of them. Throws a RangeError for a feature kind whose symbol or line type is not drawn here.
 */
export function draw(site: Site, derived: Derived, options: DrawOptions = {}): Drawing {
  const { words = {}, highlight, dimensions = true, fit } = options;
  const { units } = site;
  const into = layerBuilder();
  const locates = new Map(derived.locates.map((l) => [l.feature, l]));
  for (const feature of derived.features.values()) {
    if (feature.spec.shape === 'point') {
      drawPoint(feature, site, words, offToSay(locates.get(feature.feature.id), highlight), into);
    } else drawOutline(feature, units, dimensions, into);
  }
  for (const path of derived.paths.values()) drawPath(path, units, words, dimensions, into);
  drawCoverage(derived, units, words, into);
  drawDigs(site, derived, options, into);
  drawReach(options, into);
  if (fit !== undefined) {
    drawZones(derived.marks, fit, options, units, into);
    drawFitted(derived, fit, words, into);
  }
  drawLocates(derived, into);
  drawContinuous(derived, into);
  drawMarks(derived, words, highlight, units, into);
  drawSetOut(site, derived, highlight, into);
  const chosen = derived.marks.find((mark) => isChosen(mark, highlight));
  if (chosen !== undefined) drawMarkTies(chosen, derived.features, units, into);
  return into.build();
}

/** How far off (m) a locate is, where that is much or the locate or its mark is chosen. */
function offToSay(locate: Locate | undefined, highlight: Highlight | undefined): number | null {
  if (locate === undefined) return null;
  const { distance, feature, mark } = locate;
  const chosen = highlight?.feature === feature || isChosen(mark, highlight);
  return chosen || distance > TELLING_OFF_M ? distance : null;
}
