import type { DrawingWords } from '@footmark/drawing';
import { words } from '../words';

/** What the plan's labels say of what was seen, located and fitted, and of what pipes are made of. */
export const drawingWords: DrawingWords = {
  observation: words.observationName,
  material: (material) => (material === 'unknown' ? '' : words.materialName(material)),
  located: words.locatedText,
  hole: words.digText,
  unseen: words.unseenText,
  fitted: words.planLineName('fitted'),
  reach: words.planLineName('reach'),
  excavation: words.excavationText,
  spoil: words.spoilText,
  rootZone: words.rootZoneText,
  whose: words.whoseName,
  landCrossing: words.landCrossingText,
  clearance: words.dimensionText,
  footingLine: words.footingLineText,
};
