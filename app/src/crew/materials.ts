import type { PipeMaterial } from '@footmark/site';

/** What a pipe that was laid bare can be of: that is seen, so it is never unknown. */
export const MATERIALS = [
  'clay',
  'cast-iron',
  'plastic',
  'concrete',
  'bituminised-fibre',
  'other',
] as const satisfies readonly PipeMaterial[];
