import type { Path } from '@footmark/site';
import type { Ink, Stroke } from '../primitive';
import { proposedPaint } from '../proposedPaint';

/** Strokes of one line, the lowest first, and the ink of what is written and set beside it. */
export type PipePens = Readonly<{ beside: Ink; measured: readonly Stroke[]; assumed: readonly Stroke[] }>;

const WEIGHT = 0.85;
const WEIGHT_AS_BUILT = 1.1;
const BY_EYE: readonly number[] = [3.6, 1.5];
const PROPOSED_WEIGHT = 1.3;
const PROPOSED_DASH = 0.5;

/**
 * Pens of a pipe by its state: proposed in another line, not only in another ink, with long and short dashes. Legs put there by eye
 * are dashed, of what is proposed in shorter dashes.
 */
export const pipePens: Readonly<Record<Path['state'], PipePens>> = {
  existing: {
    beside: 'sewer',
    measured: [{ ink: 'sewer', weight: WEIGHT }],
    assumed: [{ ink: 'sewer', weight: WEIGHT, dash: BY_EYE }],
  },
  'as-built': {
    beside: 'sewer',
    measured: [{ ink: 'sewer', weight: WEIGHT_AS_BUILT }],
    assumed: [{ ink: 'sewer', weight: WEIGHT_AS_BUILT, dash: BY_EYE }],
  },
  proposed: {
    beside: 'ink',
    measured: proposedPaint(PROPOSED_WEIGHT, { weight: PROPOSED_DASH, dash: [7, 1.4, 1.8, 1.4] }),
    assumed: proposedPaint(PROPOSED_WEIGHT, { weight: PROPOSED_DASH, dash: [3, 1.4, 0.9, 1.4] }),
  },
};
