import type { DrawingWords } from '@footmark/drawing';
import { words } from '../words';

/** What the plan's labels call what was seen and what pipes are made of. */
export const drawingWords: DrawingWords = {
  observation: (kind) => words.observationName(kind),
  material: (material) => (material === 'unknown' ? '' : words.materialName(material)),
};
