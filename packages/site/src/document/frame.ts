import { z } from 'zod';
import { azimuth, id, positiveLength, turn } from './scalars';
import { ref } from './spot';

/**
 * How the true direction of the site's +y axis is known: not at all (`assumed`, +y is taken as north); its azimuth `typed`; the
 * true azimuth of a `line` between two points; a `compass` reading along such a line with the declination (east positive) that
 * belongs to the place and year; or from the `control` points, two or more.
 */
export const north = z.discriminatedUnion('by', [
  z.strictObject({ by: z.literal('assumed') }),
  z.strictObject({ by: z.literal('typed'), azimuth }),
  z.strictObject({ by: z.literal('line'), from: ref, to: ref, azimuth }),
  z.strictObject({ by: z.literal('compass'), from: ref, to: ref, reading: azimuth, declination: turn }),
  z.strictObject({ by: z.literal('control') }),
]);
export type North = z.infer<typeof north>;

/** A point of the site whose place on the earth is known, in degrees of WGS 84, and how sure (m, radius at 68 %). */
export const controlPoint = z.strictObject({
  id,
  point: ref,
  latitudeDeg: z.number().min(-90).max(90),
  longitudeDeg: z.number().min(-180).max(180),
  accuracy: positiveLength.max(10_000),
  source: z.enum(['typed', 'device']),
});
export type ControlPoint = z.infer<typeof controlPoint>;

/** How the site lies on the earth. */
export const frame = z.strictObject({ north, control: z.array(controlPoint).max(100) });
export type Frame = z.infer<typeof frame>;
