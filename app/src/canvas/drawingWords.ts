import type { DrawingWords } from '@footmark/drawing';
import { words } from '../words';

/** What the plan's labels say of what was seen, located and fitted, and of what pipes are made of, in the language that is spoken. */
export const drawingWords: DrawingWords = {
  observation: (...of) => words.observationName(...of),
  material: (material) => (material === 'unknown' ? '' : words.materialName(material)),
  located: (...of) => words.locatedText(...of),
  hole: (...of) => words.digText(...of),
  unseen: (...of) => words.unseenText(...of),
  get fitted() {
    return words.planLineName('fitted');
  },
  get reach() {
    return words.planLineName('reach');
  },
  excavation: (...of) => words.excavationText(...of),
  spoil: (...of) => words.spoilText(...of),
  rootZone: (...of) => words.rootZoneText(...of),
  whose: (...of) => words.whoseName(...of),
  landCrossing: (...of) => words.landCrossingText(...of),
  clearance: (...of) => words.dimensionText(...of),
  footingLine: (...of) => words.footingLineText(...of),
};
