import type { ByMoved, Excavation } from '@footmark/dig';
import type { Site } from '@footmark/site';
import type { Drawing } from '../drawing';
import type { DrawingWords } from '../drawOptions';
import { layerBuilder } from '../layerBuilder';
import { drawClearances } from './drawClearances';
import { drawRootZones } from './drawRootZones';

/** What concerns things while a hand moves them: root zones with what digs take of them, and how near all else is. */
export function drawMoved(
  site: Site,
  things: readonly string[],
  { clearances, trees }: ByMoved,
  excavations: readonly Excavation[],
  words: DrawingWords,
): Drawing {
  const into = layerBuilder();
  drawRootZones(trees, excavations, words, site.units, into);
  for (const id of things) {
    const isPath = site.paths.some((p) => p.id === id);
    drawClearances(clearances, isPath ? { path: id } : { feature: id }, site, words, into);
  }
  return into.build();
}
