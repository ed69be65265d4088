import { z } from 'zod';

/** Plan coordinates stay within ±1,000 km of the site's origin: more is a mistyped number, not a yard. */
export const PLAN_LIMIT_M = 1e6;

/** A short name that is unique among the things of one list, such as `f3` or `a`. */
export const id = z
  .string()
  .min(1)
  .max(64)
  .regex(/^[A-Za-z0-9_-]+$/);

/** One line that people read. */
export const line = z.string().max(200);

/** Several lines that people read. */
export const prose = z.string().max(5000);

/** Metres in the site frame. */
export const coordinate = z.number().min(-PLAN_LIMIT_M).max(PLAN_LIMIT_M);

/** A length in metres, zero allowed. */
export const length = z.number().min(0).max(PLAN_LIMIT_M);

/** A length in metres, above zero. */
export const positiveLength = z.number().positive().max(PLAN_LIMIT_M);

/** Radians clockwise from site north (+y), in [0, 2π). */
export const azimuth = z
  .number()
  .min(0)
  .lt(2 * Math.PI);

/** Radians of turn from straight on, right positive, in [−π, π]. */
export const turn = z.number().min(-Math.PI).max(Math.PI);

/** Radians that a curve turns through, right positive, less than a full circle and not nothing. */
export const sweep = z
  .number()
  .gt(-2 * Math.PI)
  .lt(2 * Math.PI)
  .refine((radians) => radians !== 0);

/** Metres above the site's level datum. */
export const elevation = z.number().min(-20_000).max(20_000);

/** A place in the plan, metres. */
export const planPoint = z.strictObject({ x: coordinate, y: coordinate });
