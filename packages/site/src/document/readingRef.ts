import { z } from 'zod';
import { id } from './scalars';

/** Names one reading of one run. */
export const readingRef = z.strictObject({ run: id, reading: id });
export type ReadingRef = z.infer<typeof readingRef>;
