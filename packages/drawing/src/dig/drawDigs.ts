import type { Derived, Site } from '@footmark/site';
import type { Drawing } from '../drawing';
import type { DrawOptions } from '../drawOptions';
import { type LayerBuilder, layerBuilder } from '../layerBuilder';
import { drawClearances } from './drawClearances';
import { drawExcavation } from './drawExcavation';
import { drawFootingLines } from './drawFootingLines';
import { drawLand } from './drawLand';
import { drawRootZones } from './drawRootZones';
import { drawTolerance } from './drawTolerance';

/** What is to be dug and what stands in its way. Nothing without `dig`. */
export function drawDigs(
  site: Site,
  derived: Derived,
  { dig, words = {}, highlight }: DrawOptions,
  into: LayerBuilder,
): void {
  if (dig === undefined) return;
  const { excavations, treeZones, clearances = [], land } = dig;
  const { units } = site;
  if (land !== undefined) drawLand(land, derived, site, words, into);
  drawRootZones(treeZones, excavations, words, units, into);
  if (excavations.some((e) => e.dig.id === highlight?.dig)) drawTolerance(site, derived, into);
  for (const one of excavations) {
    const isChosen = one.dig.id === highlight?.dig;
    drawExcavation(one, isChosen, words, units, into);
    if (isChosen) drawFootingLines(site, derived, one, words, into);
  }
  drawClearances(clearances, highlight, site, words, into);
}

/** The same as a drawing of its own, to be joined to one of the site without it. */
export function drawInTheWay(site: Site, derived: Derived, options: DrawOptions): Drawing {
  const into = layerBuilder();
  drawDigs(site, derived, options, into);
  return into.build();
}
