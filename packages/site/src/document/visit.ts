import { z } from 'zod';
import { visitPurposeIds } from '../kinds/readingWords';
import { readingRef } from './readingRef';
import { id, prose } from './scalars';

/** One day's work on the site. Runs name the visit that they belong to. */
export const visit = z.strictObject({
  id,
  date: z.iso.date().optional(),
  purpose: z.enum(visitPurposeIds),
  note: prose,
});
export type Visit = z.infer<typeof visit>;

/** Two readings of two runs: one thing that was seen from both, or two that only look like one. */
export const pair = z.strictObject({ id, a: readingRef, b: readingRef });
export type Pair = z.infer<typeof pair>;
