import { z } from 'zod';
import { azimuth, id, line, planPoint, positiveLength } from './scalars';
import { ref } from './spot';

/** A place in a picture: pixels from its top left corner, x to the right, y down. */
export const pixel = z.strictObject({ x: z.number().min(-1e6).max(1e6), y: z.number().min(-1e6).max(1e6) });
export type Pixel = z.infer<typeof pixel>;

const pair = z.strictObject({
  pixel,
  to: z.discriminatedUnion('is', [
    z.strictObject({ is: z.literal('point'), point: ref }),
    z.strictObject({ is: z.literal('place'), at: planPoint }),
  ]),
});

/**
 * How a picture lies under the plan: by eye (`finger`: the place of its middle, its scale, the azimuth of its upward edge); by a
 * known `span` between two of its points, the first of which lies `at` a place; or fitted by two or more `pairs` of a picture
 * point and a plan point (similarity, least squares from three on).
 */
export const underlayFit = z.discriminatedUnion('by', [
  z.strictObject({
    by: z.literal('finger'),
    middle: planPoint,
    metresPerPixel: positiveLength.max(1000),
    upAzimuth: azimuth,
  }),
  z.strictObject({
    by: z.literal('span'),
    from: pixel,
    to: pixel,
    distance: positiveLength,
    at: planPoint,
    azimuth,
  }),
  z.strictObject({ by: z.literal('pairs'), pairs: z.array(pair).min(2).max(50) }),
]);
export type UnderlayFit = z.infer<typeof underlayFit>;

/** A picture under the plan. `file` names it in the device's own store; it is not in the site file. */
export const underlay = z.strictObject({
  id,
  name: line,
  file: id,
  widthPx: z.number().int().min(1).max(100_000),
  heightPx: z.number().int().min(1).max(100_000),
  fit: underlayFit,
  /** 0 unseen to 1 full. */
  opacity: z.number().min(0).max(1),
  shown: z.boolean(),
  locked: z.boolean(),
});
export type Underlay = z.infer<typeof underlay>;
