import { z } from 'zod';
import { type ObservationKind, observationKindIds } from '../kinds/observationKinds';
import { pipeMaterial } from './path';
import { azimuth, id, length, line, planPoint, positiveLength, prose } from './scalars';
import { coordinatesSpot, fingerSpot, side, tape, tapesSpot } from './spot';

/** How far a crew has come with a mark. `found`: what was looked for is laid bare; `not-found`: the hole is dug, and it is not in it. */
export const foundStates = ['painted', 'dug', 'found', 'not-found'] as const;
const foundState = z.enum(foundStates);
export type FoundState = z.infer<typeof foundState>;

/** A crew's offset from its paint is paced or taped, not driven to: more than this (m) is a slip. */
const MOST_OFFSET_M = 1000;

const offset = z.number().min(-MOST_OFFSET_M).max(MOST_OFFSET_M);

/**
 * What a record is about: the mark of a reading, a point that sets a pipe out by its number, or a place of its own. Names may lead
 * nowhere any more: a record tells what was so when it was made.
 */
export const foundAbout = z.discriminatedUnion('is', [
  z.strictObject({ is: z.literal('mark'), run: id, reading: id }),
  z.strictObject({ is: z.literal('set-out'), path: id, number: z.number().int().min(1).max(99_999) }),
  z.strictObject({ is: z.literal('place') }),
]);
export type FoundAbout = z.infer<typeof foundAbout>;

/**
 * What the crew was given to set the paint out by: what is painted (`label`), where it was to stand, the azimuth of flow there, and
 * the tapes; `side` of the line from the first to the second reference. Of a mark that cannot be painted it is the paint beside it.
 */
export const givenPaint = z.strictObject({
  label: line,
  at: planPoint,
  flow: azimuth,
  ties: z.array(tape).max(3),
  side,
});
export type GivenPaint = z.infer<typeof givenPaint>;

/**
 * Where it was found. `paint`: from the paint, along the pipe with the flow and to the right of it (m, negative: against, left); else
 * as any point is measured.
 */
export const foundWhere = z.discriminatedUnion('by', [
  z.strictObject({
    by: z.literal('paint'),
    along: offset,
    right: offset,
  }),
  tapesSpot,
  coordinatesSpot,
  fingerSpot,
]);
export type FoundWhere = z.infer<typeof foundWhere>;

const facts = {
  id,
  about: foundAbout,
  state: foundState,
  /** Who says so; empty when nobody gave a name. */
  by: line,
  /** When, with the offset of the place's own clock. */
  at: z.iso.datetime({ offset: true }),
  given: givenPaint.optional(),
  where: foundWhere.optional(),
  /** From the ground (m) to the top or to the invert of the pipe. */
  depth: z.strictObject({ to: z.enum(['top', 'invert']), depth: length.max(50) }).optional(),
  seen: (z.enum(observationKindIds) as z.ZodType<ObservationKind>).optional(),
  material: pipeMaterial.optional(),
  /** Inside diameter (m). */
  diameter: positiveLength.max(5).optional(),
  note: prose,
  photos: z.array(id).max(20),
};

/** What a crew found, as it sends it back. */
export const foundReport = z.strictObject(facts);
export type FoundReport = z.infer<typeof foundReport>;

/** What a crew found. `answer`: what it came back with; absent for what was put down in the office. */
export const asFound = z.strictObject({ ...facts, answer: id.optional() });
export type AsFound = z.infer<typeof asFound>;

/** One text for what a record is about, for use as a map's key; null for a place of its own. */
export function aboutKey(about: FoundAbout): string | null {
  switch (about.is) {
    case 'mark':
      return `mark/${about.run}/${about.reading}`;
    case 'set-out':
      return `set-out/${about.path}/${about.number}`;
    case 'place':
      return null;
  }
}
