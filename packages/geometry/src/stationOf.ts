import { azimuthBetween, deflectionBetween, normalizeAzimuth, pointAtAzimuth, signedAngle } from './angle';
import { locate } from './locate';
import { type PathElement, type PathLine, pathLength } from './pathLine';
import { cross, distance, dot, type Point, subtract } from './point';
import { valueAt } from './sorted';
import { NEGLIGIBLE_LENGTH_M } from './tolerances';

/**
 * `point` is the place of the line nearest to the point asked about, `distance` the distance to it (never
 * negative), `offset` the same with a sign: positive to the right of the flow. Before the start and past the
 * end `offset` is only the part square to the line, so less than `distance`.
 */
export type PathOffset = Readonly<{ station: number; offset: number; distance: number; point: Point }>;

/** The station and offset of `p`. The first of equally near places is given. */
export function stationOf(line: PathLine, p: Point): PathOffset {
  let nearest = { distance: Infinity, station: 0 };
  line.elements.forEach((element, i) => {
    const along = alongElement(element, p);
    const station = valueAt(line.starts, i) + along;
    const away = distance(p, pointOn(element, along));
    if (away < nearest.distance) nearest = { distance: away, station };
  });
  const { station } = nearest;
  const { point, azimuth } = locate(line, station);
  const toRight = -cross(unit(headingThrough(line, station, azimuth)), subtract(p, point));
  const atEnd = station <= 0 || station >= pathLength(line);
  const offset = atEnd ? toRight : Math.sign(toRight) * nearest.distance;
  return { station, offset, distance: nearest.distance, point };
}

/** How far into the element its nearest point to `p` lies, 0 to its length. */
function alongElement(element: PathElement, p: Point): number {
  const { start, azimuth, length } = element;
  if (element.kind === 'straight') {
    return Math.min(length, Math.max(0, dot(subtract(p, start), unit(azimuth))));
  }
  const { centre, radius, deflection } = element;
  const turn = deflectionBetween(azimuthBetween(centre, start), azimuthBetween(centre, p));
  const swept = normalizeAzimuth(Math.sign(deflection) * turn);
  if (swept <= Math.abs(deflection)) return swept * radius;
  // Outside the arc's sector: the nearer end, which is the one that fewer radians lead to.
  return swept - Math.abs(deflection) < 2 * Math.PI - swept ? length : 0;
}

function pointOn(element: PathElement, along: number): Point {
  const { start, azimuth } = element;
  if (element.kind === 'straight') return pointAtAzimuth(start, azimuth, along);
  const fromCentre = azimuthBetween(element.centre, start);
  const turn = (Math.sign(element.deflection) * along) / element.radius;
  return pointAtAzimuth(element.centre, fromCentre + turn, element.radius);
}

/**
 * The heading at a station, and at a sharp corner the mean of those before and after: the whole outside of
 * the corner lies on one side of it.
 */
function headingThrough(line: PathLine, station: number, azimuth: number): number {
  if (station <= 0) return azimuth;
  const before = locate(line, Math.max(0, station - NEGLIGIBLE_LENGTH_M)).azimuth;
  const after = locate(line, station + NEGLIGIBLE_LENGTH_M).azimuth;
  return before + signedAngle(after - before) / 2;
}

function unit(azimuth: number): Point {
  return { x: Math.sin(azimuth), y: Math.cos(azimuth) };
}
