import { z } from 'zod';
import { readingRef } from './readingRef';
import { id, length, line, positiveLength, prose } from './scalars';

/** What the ground is. `not-chosen`: nobody has looked, and the gentlest slope holds. */
export const soilIds = ['not-chosen', 'rock', 'a', 'b', 'c'] as const;
export const soil = z.enum(soilIds);
export type Soil = z.infer<typeof soil>;

/** How the sides are kept from caving in: cut back to a slope, or held by a shield or shoring and cut straight down. */
export const protection = z.enum(['slope', 'shield']);
export type Protection = z.infer<typeof protection>;

const common = {
  id,
  name: line,
  /** Bottom width (m); absent: the rule's. */
  bottomWidth: positiveLength.max(100).optional(),
  /** Depth of the bottom below the ground (m); absent: from the pipe, where that is known. */
  depth: length.max(100).optional(),
  protection: protection.optional(),
  /** Of a shield, above the bottom (m); absent: it reaches the ground. Without one it means nothing. */
  shieldHeight: positiveLength.max(30).optional(),
  /** On which side of the dig, seen along the pipe's flow, the spoil is put. */
  spoil: z.enum(['left', 'right', 'away']).optional(),
  note: prose,
};

/** A dig that is planned: a pit at a mark as large as its hole, or a trench along a pipe from station to station (m). */
export const dig = z.discriminatedUnion('is', [
  z.strictObject({
    is: z.literal('pit'),
    at: readingRef,
    length: positiveLength.max(100).optional(),
    ...common,
  }),
  z.strictObject({ is: z.literal('trench'), path: id, from: length, to: length, ...common }),
]);
export type Dig = z.infer<typeof dig>;

/** The one-call ticket: number, and the days on which the centre was called and the marks hold. */
export const oneCall = z.strictObject({
  ticket: line,
  called: z.iso.date().optional(),
  validFrom: z.iso.date().optional(),
  validUntil: z.iso.date().optional(),
});
export type OneCall = z.infer<typeof oneCall>;

/** What was said or seen on the site, when. `at` is an ISO instant. */
export const siteNote = z.strictObject({ id, at: z.iso.datetime(), text: prose });
export type SiteNote = z.infer<typeof siteNote>;

/** What is planned to be dug, and what is known of the ground. */
export const digging = z.strictObject({
  soil,
  /** Dug before: soil that was disturbed is never Type A. */
  disturbed: z.boolean(),
  protection,
  digs: z.array(dig).max(500),
  oneCall: oneCall.optional(),
  notes: z.array(siteNote).max(5000),
});
export type Digging = z.infer<typeof digging>;
