import { z } from 'zod';
import { elevation, id, length, line, positiveLength } from './scalars';
import { spot } from './spot';

export const FEWEST_PATH_VERTICES = 2;

export const pipeMaterials = [
  'unknown',
  'clay',
  'cast-iron',
  'plastic',
  'concrete',
  'bituminised-fibre',
  'other',
] as const;
export const pipeMaterial = z.enum(pipeMaterials);
export type PipeMaterial = z.infer<typeof pipeMaterial>;

/**
 * How deep the pipe is at a point, as it was measured: its invert as a level, or a depth below the ground to the invert or to
 * the top of the pipe. `sigma` (m) when it is known better or worse than such a measurement is.
 */
export const pipeLevel = z.discriminatedUnion('is', [
  z.strictObject({ is: z.literal('invert'), level: elevation, sigma: positiveLength.max(10).optional() }),
  z.strictObject({
    is: z.literal('depth-to-invert'),
    depth: length.max(50),
    sigma: positiveLength.max(10).optional(),
  }),
  z.strictObject({
    is: z.literal('depth-to-top'),
    depth: length.max(50),
    sigma: positiveLength.max(10).optional(),
  }),
]);
export type PipeLevel = z.infer<typeof pipeLevel>;

/**
 * A point of the pipe's centre line. `bendRadius` (m) of the fitting there, absent: the path's own; `drop` (m): how far the
 * pipe falls straight down at this point, absent: not at all; `bend` (rad): by how much the fitting there is known to turn the
 * pipe, to whichever side it is drawn.
 */
export const pathVertex = z.strictObject({
  id,
  spot,
  bendRadius: length.max(10).optional(),
  drop: length.max(50).optional(),
  bend: z.number().min(0).max(Math.PI).optional(),
  level: pipeLevel.optional(),
});
export type PathVertex = z.infer<typeof pathVertex>;

/** What the pipe is from a station (plan metres along the path) up to the next stretch. `slope` is fall over run. */
export const stretch = z.strictObject({
  from: length,
  material: pipeMaterial,
  diameter: positiveLength.max(5),
  slope: z.number().min(0).max(2),
});
export type Stretch = z.infer<typeof stretch>;

/** The plan length (m) along the pipe between two of its points, as it was taped or is known from a plan. */
export const knownLength = z.strictObject({ id, from: id, to: id, length: positiveLength });
export type KnownLength = z.infer<typeof knownLength>;

/**
 * A pipe in plan, its vertices in the direction of flow. A path whose last vertex is `at` a vertex of another path joins
 * that path there; together they form a tree. Stretches are ordered by `from`, the first from 0.
 */
export const path = z.strictObject({
  id,
  name: line,
  state: z.enum(['existing', 'proposed', 'as-built']),
  vertices: z.array(pathVertex).min(FEWEST_PATH_VERTICES).max(5000),
  bendRadius: length.max(10),
  stretches: z.array(stretch).min(1).max(500),
  knownLengths: z.array(knownLength).max(500).optional(),
  /** Not to be moved or changed by a slip of the hand. */
  locked: z.literal(true).optional(),
});
export type Path = z.infer<typeof path>;
