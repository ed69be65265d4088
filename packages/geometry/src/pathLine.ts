import { azimuthBetween, deflectionBetween, pointAtAzimuth } from './angle';
import { arcLength } from './curve';
import { fitBends } from './fitBends';
import { distance, interpolate, type Point } from './point';
import { fail, ok, type Result } from './result';
import { valueAt } from './sorted';
import { COINCIDENT_M, NEGLIGIBLE_LENGTH_M } from './tolerances';

/**
 * A corner of the drawn path and the centre-line radius of the bend there, metres; 0 keeps it sharp, at the
 * ends it has no effect.
 */
export type PathVertex = Readonly<{ point: Point; bendRadius: number }>;

/**
 * A piece of the curve. `azimuth` is the heading at its start (radians clockwise from +y), `deflection` the
 * turn (positive to the right); metres.
 */
export type PathElement =
  | Readonly<{ kind: 'straight'; start: Point; azimuth: number; length: number; leg: number }>
  | Readonly<{
      kind: 'arc';
      start: Point;
      azimuth: number;
      length: number;
      radius: number;
      deflection: number;
      centre: Point;
      vertex: number;
    }>;

/**
 * The centre line of a buried pipe in plan: straights joined by tangent arcs. Stations are metres along it
 * from its first vertex.
 */
export type PathLine = Readonly<{
  elements: readonly PathElement[];
  /** Station where each element starts, and the length of the line last: one more than there are elements. */
  starts: Float64Array;
  /**
   * Per element x, y, unit heading x, y and curvature (1/m, positive to the right): `MOTION_STRIDE` numbers.
   */
  motion: Float64Array;
  /** Station of each vertex: the middle of its arc, or the corner itself where there is none. */
  vertexStations: Float64Array;
  /** Radius in force at each vertex, 0 where the corner is sharp. */
  radii: Float64Array;
  /** Vertices whose radius had to be reduced to fit, ascending. */
  reducedBends: readonly number[];
}>;

export type PathLineProblem = 'too-few-vertices' | 'zero-length-leg' | 'not-finite' | 'negative-radius';

/** Numbers per element in `PathLine.motion`. */
export const MOTION_STRIDE = 5;

/**
 * The curve through the legs of `vertices`, each corner replaced by an arc tangent to both legs: tangent
 * R·tan(Δ/2), arc R·Δ (any route-surveying text). A radius whose tangents do not fit is reduced as `fitBends`
 * says and its vertex listed. Two coincident neighbours give `zero-length-leg` with `values.leg`; the other
 * codes give `values.vertex` or `values.count`.
 */
export function pathLine(vertices: readonly PathVertex[]): Result<PathLine, PathLineProblem> {
  for (const [vertex, { point, bendRadius }] of vertices.entries()) {
    if (!Number.isFinite(point.x + point.y + bendRadius)) return fail('not-finite', { vertex });
    if (bendRadius < 0) return fail('negative-radius', { vertex });
  }
  if (vertices.length < 2) return fail('too-few-vertices', { count: vertices.length });

  const legs = legsOf(vertices);
  const short = legs.findIndex((leg) => leg.length <= COINCIDENT_M);
  if (short >= 0) return fail('zero-length-leg', { leg: short });

  const bends = fitBends(
    legs.map((leg) => leg.length),
    legs.slice(1).map((leg, i) => deflectionBetween(legs[i]?.azimuth ?? 0, leg.azimuth)),
    vertices.slice(1, -1).map((vertex) => vertex.bendRadius),
  );

  const elements: PathElement[] = [];
  const vertexStations = new Float64Array(vertices.length);
  const radii = new Float64Array(vertices.length);
  const reducedBends: number[] = [];
  let station = 0;
  for (const [i, leg] of legs.entries()) {
    const cutBefore = bends[i - 1]?.tangent ?? 0;
    const bend = bends[i];
    const next = legs[i + 1];
    const straight = leg.length - cutBefore - (bend?.tangent ?? 0);
    if (straight > NEGLIGIBLE_LENGTH_M) {
      const start = interpolate(leg.from, leg.to, cutBefore / leg.length);
      elements.push({ kind: 'straight', start, azimuth: leg.azimuth, length: straight, leg: i });
      station += straight;
    }
    vertexStations[i + 1] = station;
    if (bend === undefined || next === undefined) continue;
    if (bend.reduced) reducedBends.push(i + 1);
    if (bend.radius === 0) continue;
    const deflection = deflectionBetween(leg.azimuth, next.azimuth);
    const start = interpolate(leg.to, leg.from, bend.tangent / leg.length);
    const toCentre = leg.azimuth + (Math.sign(deflection) * Math.PI) / 2;
    const length = arcLength(bend.radius, deflection);
    elements.push({
      kind: 'arc',
      start,
      azimuth: leg.azimuth,
      length,
      radius: bend.radius,
      deflection,
      centre: pointAtAzimuth(start, toCentre, bend.radius),
      vertex: i + 1,
    });
    radii[i + 1] = bend.radius;
    vertexStations[i + 1] = station + length / 2;
    station += length;
  }
  return ok({ elements, ...tablesOf(elements), vertexStations, radii, reducedBends });
}

/** Length of the line, arcs and all, metres. */
export function pathLength(line: PathLine): number {
  return valueAt(line.starts, line.elements.length);
}

/**
 * Station of vertex `i`, metres: the middle of its arc, 0 and the length at the ends. Throws a RangeError
 * when there is no such vertex.
 */
export function stationOfVertex(line: PathLine, i: number): number {
  return valueAt(line.vertexStations, i);
}

type Leg = Readonly<{ from: Point; to: Point; length: number; azimuth: number }>;

function legsOf(vertices: readonly PathVertex[]): readonly Leg[] {
  return vertices.slice(1).map(({ point: to }, i) => {
    const from = vertices[i]?.point ?? to;
    return { from, to, length: distance(from, to), azimuth: azimuthBetween(from, to) };
  });
}

function tablesOf(elements: readonly PathElement[]): Pick<PathLine, 'starts' | 'motion'> {
  const starts = new Float64Array(elements.length + 1);
  const motion = new Float64Array(elements.length * MOTION_STRIDE);
  let station = 0;
  elements.forEach((element, i) => {
    const { start, azimuth, length } = element;
    const curvature = element.kind === 'arc' ? Math.sign(element.deflection) / element.radius : 0;
    motion.set([start.x, start.y, Math.sin(azimuth), Math.cos(azimuth), curvature], i * MOTION_STRIDE);
    station += length;
    starts[i + 1] = station;
  });
  return { starts, motion };
}
