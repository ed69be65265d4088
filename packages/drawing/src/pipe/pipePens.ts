import type { Path } from '@footmark/site';
import type { Stroke } from '../primitive';

/**
 * Pens of a pipe by its state: proposed in another line, not only in another ink (white in the uniform colour code), with
 * long and short dashes. Legs put there by eye are dashed.
 */
export const pipePens: Readonly<Record<Path['state'], Readonly<{ measured: Stroke; assumed: Stroke }>>> = {
  existing: {
    measured: { ink: 'sewer', weight: 0.85 },
    assumed: { ink: 'sewer', weight: 0.85, dash: [3.6, 1.5] },
  },
  'as-built': {
    measured: { ink: 'sewer', weight: 1.1 },
    assumed: { ink: 'sewer', weight: 1.1, dash: [3.6, 1.5] },
  },
  proposed: {
    measured: { ink: 'proposed', weight: 0.85, dash: [7, 1.4, 1.8, 1.4] },
    assumed: { ink: 'proposed', weight: 0.85, dash: [3, 1.4, 0.9, 1.4] },
  },
};
