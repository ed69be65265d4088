import { z } from 'zod';
import { type ObservationKind, observationKindIds } from '../kinds/observationKinds';
import { actionIds, runEndIds, severityIds } from '../kinds/readingWords';
import { azimuth, id, length, line, positiveLength, prose } from './scalars';
import { ref } from './spot';

const hour = z.literal([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12]);

/** Where on the pipe wall, as on a clock face looking the way the camera looks; a range runs clockwise. */
export const clock = z.strictObject({ from: hour, to: hour.optional() });
export type Clock = z.infer<typeof clock>;

/** What was done on the ground about a mark, and on which day. */
export const groundState = z.strictObject({
  state: z.enum(['painted', 'flagged', 'dug', 'found']),
  date: z.iso.date().optional(),
});
export type GroundState = z.infer<typeof groundState>;

/**
 * One look at the counter. `number` names it within the run for good, whatever is sorted in later; `counter` is what it showed,
 * in metres of its own count, and `to` what it showed at the far end of something that goes on. `newZero` is given when the
 * counter was set anew here, to that value, so that later readings count on from it. `seenAt` is the point of the plan that was
 * seen: a junction, a fitting, a cleanout above. `water` is the share of the pipe's bore that stood in water. `videoAt`: seconds
 * into the recording. `offset`: where paint stands for a mark that cannot be painted, as azimuth and distance from it.
 */
export const reading = z.strictObject({
  id,
  number: z.number().int().min(1).max(99_999),
  counter: length.max(10_000),
  to: length.max(10_000).optional(),
  seen: z.enum(observationKindIds) as z.ZodType<ObservationKind>,
  clock: clock.optional(),
  passed: z.boolean(),
  severity: z.enum(severityIds).optional(),
  action: z.enum(actionIds).optional(),
  water: z.number().min(0).max(1).optional(),
  note: prose,
  photo: id.optional(),
  videoAt: z.number().min(0).max(86_400).optional(),
  newZero: length.max(10_000).optional(),
  seenAt: ref.optional(),
  ground: groundState.optional(),
  offset: z.strictObject({ azimuth, distance: positiveLength.max(100) }).optional(),
});
export type Reading = z.infer<typeof reading>;

/**
 * Where the camera head was when the counter showed `counter`: inside the pipe at the entry, at the rim of a riser of
 * length `riser` (m, rim to pipe invert) that turns into the pipe with a sweep of radius `sweepRadius` (m), at the base of
 * a stack, or in the pipe at a point of the plan that it was seen or heard at.
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
  z.strictObject({ at: z.literal('point'), counter: length.max(10_000), point: ref }),
]);
export type Zero = z.infer<typeof zero>;

/** True length per counted length: said (1: the counter is taken as true), or from a known length that was counted. */
export const counterScale = z.discriminatedUnion('by', [
  z.strictObject({ by: z.literal('said'), factor: positiveLength.max(100) }),
  z.strictObject({
    by: z.literal('calibration'),
    counted: positiveLength.max(10_000),
    actual: positiveLength.max(10_000),
  }),
]);
export type CounterScale = z.infer<typeof counterScale>;

/** True length per counted length. */
export function factorOf(scale: CounterScale): number {
  return scale.by === 'said' ? scale.factor : scale.actual / scale.counted;
}

/**
 * The camera head: `length` (m) from its tail, which carries the sonde that a receiver finds, to its lens, and which of the two
 * stood at the place of the zero.
 */
export const head = z.strictObject({ length: length.max(5), zeroed: z.enum(['lens', 'tail']) });
export type Head = z.infer<typeof head>;

/**
 * One push of the camera. `letter` and a reading's number make the label that is painted (`A3`). `visit` is the day's work
 * that it belongs to. `entry` is the feature it went in at and `path` the pipe it came into there (null: not chosen).
 * `branches` names the paths it turned into at junctions, in order, when pushed against the flow. `resolution` (m) is the
 * counter's smallest step, `ended` why the camera went no further.
 */
export const run = z.strictObject({
  id,
  letter: z.string().regex(/^[A-Z]{1,3}$/),
  name: line,
  visit: id.nullable(),
  entry: id.nullable(),
  path: id.nullable(),
  direction: z.enum(['with-flow', 'against-flow']),
  branches: z.array(id).max(100),
  zero,
  scale: counterScale,
  resolution: length.max(100),
  head,
  ended: z.enum(runEndIds).optional(),
  note: prose,
  readings: z.array(reading).max(5000),
});
export type Run = z.infer<typeof run>;
