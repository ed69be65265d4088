import { z } from 'zod';
import { azimuth, coordinate, id, length, positiveLength, sweep, turn } from './scalars';

/** Names one point of one thing: `of` a feature or a path, `at` one of its vertices. */
export const ref = z.strictObject({ of: id, at: id });
export type Ref = z.infer<typeof ref>;

export const tape = z.strictObject({ from: ref, distance: positiveLength });
export type Tape = z.infer<typeof tape>;

/** A side of a line, seen along it. */
export const side = z.enum(['left', 'right']);

export const fingerSpot = z.strictObject({ by: z.literal('finger'), x: coordinate, y: coordinate });
export const coordinatesSpot = z.strictObject({
  by: z.literal('coordinates'),
  x: coordinate,
  y: coordinate,
  sigma: positiveLength.max(1000).optional(),
});
export const tapesSpot = z.strictObject({
  by: z.literal('tapes'),
  tapes: z.array(tape).min(2).max(12),
  side,
});

const course = z.strictObject({ by: z.literal('course'), azimuth, distance: positiveLength });
const turnOff = z.strictObject({ by: z.literal('turn'), turn, distance: positiveLength });
const arc = z.strictObject({
  by: z.literal('arc'),
  radius: positiveLength,
  sweep,
  chord: azimuth.nullable(),
});

/**
 * How a point got its place. The measurements are kept and the place follows from them, so that a corrected tape moves
 * the point and all that hangs on it.
 *
 * - `finger`: put there by eye (assumed); `coordinates`: typed in the site frame (measured), with `sigma` (m) from an instrument
 *   that says how sure it is
 * - `tapes`: two or more taped distances, from the near face of what is round and taped so (see `kinds/`); `side` tells which of
 *   the two crossings of the first two is meant, seen from the first point to the second
 * - `offset`: `along` the line `from`→`to`, then square off it by `out`, right of that direction positive
 * - `bearing`: azimuth and distance from another point
 * - `between`: on the line `from`→`to` at a fraction of its length
 * - `at`: the same place as another point
 * - `course`: azimuth and distance from the vertex before it in the same line
 * - `turn`: turn (right positive) from the direction of the leg before it, and distance, from the vertex before it
 * - `arc`: the end of a curve from the vertex before it, of this radius and sweep (right positive); `chord` is the azimuth of its
 *   chord, null for a curve that leaves in the direction of the leg before it
 */
export const spot = z.discriminatedUnion('by', [
  fingerSpot,
  coordinatesSpot,
  tapesSpot,
  z.strictObject({
    by: z.literal('offset'),
    from: ref,
    to: ref,
    along: coordinate,
    out: coordinate,
  }),
  z.strictObject({ by: z.literal('bearing'), from: ref, azimuth, distance: length }),
  z.strictObject({ by: z.literal('between'), from: ref, to: ref, fraction: z.number().min(-10).max(10) }),
  z.strictObject({ by: z.literal('at'), point: ref }),
  course,
  turnOff,
  arc,
]);
export type Spot = z.infer<typeof spot>;

/** A leg that is measured from the point before it. */
export const legSpot = z.discriminatedUnion('by', [course, turnOff, arc]);
export type LegSpot = z.infer<typeof legSpot>;

/** A corner, an end or the one point of a thing. Its id is unique within the thing and survives insertions. */
export const vertex = z.strictObject({ id, spot });
export type Vertex = z.infer<typeof vertex>;

/** The points that a spot is measured from, in the order in which it names them. */
export function refsOfSpot(of: Spot): readonly Ref[] {
  switch (of.by) {
    case 'tapes':
      return of.tapes.map((t) => t.from);
    case 'offset':
    case 'between':
      return [of.from, of.to];
    case 'bearing':
      return [of.from];
    case 'at':
      return [of.point];
    case 'finger':
    case 'coordinates':
    case 'course':
    case 'turn':
    case 'arc':
      return [];
  }
}

/** How many of the vertices before it in its own line a spot is counted from. */
export function countedFrom(of: Spot): 0 | 1 | 2 {
  switch (of.by) {
    case 'course':
      return 1;
    case 'turn':
      return 2;
    case 'arc':
      return of.chord === null ? 2 : 1;
    default:
      return 0;
  }
}

/** True for a spot that is counted from the vertex before it in its own line. */
export function followsPrevious(of: Spot): of is LegSpot {
  return countedFrom(of) > 0;
}
