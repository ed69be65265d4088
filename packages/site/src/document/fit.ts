import { z } from 'zod';
import { pathVertex } from './path';
import { counterScale, zero } from './run';
import { id, line } from './scalars';

/** One piece of what a fit rests on: which observation, its deviation, how far off it came out, and its standardised residual. */
export const fitEvidence = z.strictObject({
  /** Names the observation: see `fit/observationTag.ts`. */
  observation: line,
  sigma: z.number().positive(),
  residual: z.number(),
  standardized: z.number(),
});
export type FitEvidence = z.infer<typeof fitEvidence>;

/**
 * A fit that was taken: the lines as they were drawn before it and as it put them, what it made of the runs, and its evidence.
 * It stands as long as the lines and the runs are as it left them; after a change by hand it is history.
 */
export const takenFit = z.strictObject({
  paths: z
    .array(
      z.strictObject({
        id,
        drawn: z.array(pathVertex).min(2).max(5000),
        fitted: z.array(pathVertex).min(2).max(5000),
        /** Its new points, each with a locate that found the pipe there. */
        added: z.array(z.strictObject({ vertex: id, locate: id })).max(5000),
      }),
    )
    .max(500),
  runs: z
    .array(
      z.strictObject({
        id,
        /** What was said of the run, on which the fit rests. */
        from: z.strictObject({ scale: counterScale, zero }),
        /** True length per counted length, the counter at the zero (m), and the cable between it and the pipe (m). */
        scale: z.number().positive(),
        zero: z.number(),
        entryLeg: z.number(),
      }),
    )
    .max(500),
  /**
   * Readings whose count the fit corrected: what was read and what it would have been, in metres of the counter, counted as if it had never
   * been set anew. One that was read otherwise since counts as it was read.
   */
  counters: z.array(z.strictObject({ reading: id, read: z.number(), counted: z.number() })).max(100_000),
  /** Standard deviation of unit weight; null without redundancy. */
  sigma0: z.number().min(0).nullable(),
  /** Observations less unknowns. */
  dof: z.number().int().min(0),
  evidence: z.array(fitEvidence).max(100_000),
});
export type TakenFit = z.infer<typeof takenFit>;
