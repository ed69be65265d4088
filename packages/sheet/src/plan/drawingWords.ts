import type { DrawingWords } from '@footmark/drawing';
import type { Words } from '@footmark/words';

/** What a plan's labels say, in the sheet's language. */
export function drawingWordsOf(words: Words): DrawingWords {
  return {
    observation: words.observationName,
    material: (material) => (material === 'unknown' ? '' : words.materialName(material)),
    located: words.locatedText,
    hole: words.digText,
    unseen: words.unseenText,
    excavation: words.excavationText,
    spoil: words.spoilText,
    rootZone: words.rootZoneText,
    whose: words.whoseName,
    landCrossing: words.landCrossingText,
    footingLine: words.footingLineText,
  };
}
