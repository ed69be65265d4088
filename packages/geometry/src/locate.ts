import { normalizeAzimuth } from './angle';
import { MOTION_STRIDE, type PathLine, pathLength } from './pathLine';
import type { Point } from './point';
import { lastAtOrBelow, valueAt } from './sorted';

/**
 * `azimuth` is the heading (radians clockwise from +y), after the turn at a sharp corner. `element` indexes
 * `line.elements`; `leg` is the drawn leg, which changes at a vertex's own station. `beyond` is 0 on the
 * line, else the metres by which the station lies before the start (negative) or past the end (positive), and
 * the place is that end.
 */
export type PathPlace = Readonly<{
  point: Point;
  azimuth: number;
  element: number;
  leg: number;
  beyond: number;
}>;

/** The place at a station, by bisection. Throws a RangeError for a station that is not a number. */
export function locate(line: PathLine, station: number): PathPlace {
  if (Number.isNaN(station)) throw new RangeError('locate: station is not a number');
  const length = pathLength(line);
  const at = Math.min(length, Math.max(0, station));
  const element = lastAtOrBelow(line.starts, line.elements.length, at);
  const base = element * MOTION_STRIDE;
  const along = at - valueAt(line.starts, element);
  const xy = new Float64Array(2);
  writePoint(line.motion, base, along, xy, 0);
  const [headingX, headingY] = [valueAt(line.motion, base + 2), valueAt(line.motion, base + 3)];
  return {
    point: { x: valueAt(xy, 0), y: valueAt(xy, 1) },
    azimuth: normalizeAzimuth(Math.atan2(headingX, headingY) + along * valueAt(line.motion, base + 4)),
    element,
    leg: lastAtOrBelow(line.vertexStations, line.vertexStations.length - 1, at),
    beyond: station - at,
  };
}

/**
 * The points at many stations as x, y pairs, metres, in the order asked. Stations off the line give its
 * nearest end, NaN gives NaN. Nothing is allocated per station; `into` (twice as long as `stations`, else a
 * RangeError) is filled and returned when given.
 */
export function locateMany(
  line: PathLine,
  stations: Float64Array,
  into: Float64Array = new Float64Array(2 * stations.length),
): Float64Array {
  if (into.length !== 2 * stations.length) throw new RangeError(`locateMany: into holds ${into.length}`);
  const { starts, motion } = line;
  const count = line.elements.length;
  const length = pathLength(line);
  for (let i = 0; i < stations.length; i += 1) {
    const at = Math.min(length, Math.max(0, valueAt(stations, i)));
    const element = lastAtOrBelow(starts, count, at);
    writePoint(motion, element * MOTION_STRIDE, at - valueAt(starts, element), into, 2 * i);
  }
  return into;
}

/** The point `along` metres into the element whose numbers begin at `base`, written to `out` at `index`. */
function writePoint(
  motion: Float64Array,
  base: number,
  along: number,
  out: Float64Array,
  index: number,
): void {
  const headingX = valueAt(motion, base + 2);
  const headingY = valueAt(motion, base + 3);
  const curvature = valueAt(motion, base + 4);
  let ahead = along;
  let right = 0;
  if (curvature !== 0) {
    // On a circle: R·sin θ ahead and R·(1 − cos θ) = 2R·sin²(θ/2) to the side it turns to.
    const turn = along * curvature;
    ahead = Math.sin(turn) / curvature;
    right = (2 * Math.sin(turn / 2) ** 2) / curvature;
  }
  out[index] = valueAt(motion, base) + ahead * headingX + right * headingY;
  out[index + 1] = valueAt(motion, base + 1) + ahead * headingY - right * headingX;
}
