import { z } from 'zod';
import { type ObservationKind, observationKindIds } from '../kinds/observationKinds';
import { id, length, line, positiveLength, prose } from './scalars';

const hour = z.literal([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12]);

/** Where on the pipe wall, as on a clock face looking the way the camera looks; a range runs clockwise. */
export const clock = z.strictObject({ from: hour, to: hour.optional() });
export type Clock = z.infer<typeof clock>;

/**
 * One look at the counter. `number` names it within the run for good, whatever is sorted in later; `counter` is what it showed, in metres of its own count; `newZero` is given when the counter was
 * set anew here, to that value, so that later readings count on from it.
 */
export const reading = z.strictObject({
  id,
  number: z.number().int().min(1).max(99_999),
  counter: length.max(10_000),
  seen: z.enum(observationKindIds) as z.ZodType<ObservationKind>,
  clock: clock.optional(),
  passed: z.boolean(),
  note: prose,
  newZero: length.max(10_000).optional(),
});
export type Reading = z.infer<typeof reading>;

/**
 * Where the camera head was when the counter showed `counter`: inside the pipe at the entry, at the rim of a riser of
 * length `riser` (m, rim to pipe invert) that turns into the pipe with a sweep of radius `sweepRadius` (m), or at the base of
 * a stack.
 */
export const zero = z.discriminatedUnion('at', [
  z.strictObject({ at: z.literal('in-pipe'), counter: length.max(10_000) }),
  z.strictObject({
    at: z.literal('rim'),
    counter: length.max(10_000),
    riser: length.max(100),
    sweepRadius: length.max(10),
  }),
  z.strictObject({ at: z.literal('stack-base'), counter: length.max(10_000) }),
]);
export type Zero = z.infer<typeof zero>;

/**
 * One push of the camera. `letter` and a reading's number make the label that is painted (`A3`). `entry` is the feature it went in at and `path` the pipe it came into there (null: not chosen).
 * `branches` names the paths it turned into at junctions, in order, when pushed against the flow. `scale` is true length per counted length, `resolution` (m) the counter's
 * smallest step.
 */
export const run = z.strictObject({
  id,
  letter: z.string().regex(/^[A-Z]{1,3}$/),
  name: line,
  date: z.iso.date().optional(),
  entry: id.nullable(),
  path: id.nullable(),
  direction: z.enum(['with-flow', 'against-flow']),
  branches: z.array(id).max(100),
  zero,
  scale: positiveLength.max(100),
  resolution: length.max(100),
  note: prose,
  readings: z.array(reading).max(5000),
});
export type Run = z.infer<typeof run>;
