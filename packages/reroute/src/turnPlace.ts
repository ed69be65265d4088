import {
  add,
  azimuthBetween,
  cross,
  deflectionBetween,
  distance,
  midpoint,
  type Point,
  pointAtAzimuth,
  scale,
  subtract,
} from '@footmark/geometry';
import { drainBends } from '@footmark/site';

/** Turns (rad) that a drain may make in one place: none, and those of its standard bends, to both sides. */
const TURNS = [0, ...drainBends.flatMap(({ turn }) => [turn, -turn])];
/** A turn is a bend's when it is as near to it (rad): rounding of places. */
const SAME_TURN_RAD = 1e-6;
/** Legs shorter than this (m) have no direction. */
const LEAST_LEG_M = 0.01;

type Line = { readonly from: Point; readonly azimuth: number };
type Candidate = { readonly at: Point; readonly kept: number };

/**
 * Where a point of a drawn pipe is put by a hand at `p` so that the pipe turns by standard bends: there, and at the points beside it. The place
 * within `reach` (m) that keeps the most of these turns, of such the nearest; null where none is near.
 */
export function turnPlace(points: readonly Point[], index: number, p: Point, reach: number): Point | null {
  const [before, after] = [points[index - 1], points[index + 1]];
  const from = before === undefined ? [] : linesFrom(before, points[index - 2], 1);
  const to = after === undefined ? [] : linesFrom(after, points[index + 2], -1);
  const alone = [...from, ...to].map((line) => footOn(line, p));
  const places =
    before === undefined || after === undefined
      ? alone
      : [
          ...meetings(from, to),
          ...turningBetween(before, after, from, to),
          ...onArcs(before, after, p),
          ...alone,
        ];
  const near = places.flatMap((at): Candidate[] =>
    at === null || distance(at, p) > reach ? [] : [{ at, kept: turnsKept(points.with(index, at), index) }],
  );
  const [best] = near.sort((a, b) => b.kept - a.kept || distance(a.at, p) - distance(b.at, p));
  return best === undefined || best.kept === 0 ? null : best.at;
}

/** Lines through a neighbour on which the leg to it may run: its own other leg, seen from it, is at `beyond`. With the flow 1, against it −1. */
function linesFrom(at: Point, beyond: Point | undefined, flow: 1 | -1): readonly Line[] {
  if (beyond === undefined || distance(at, beyond) < LEAST_LEG_M) return [];
  const azimuth = flow === 1 ? azimuthBetween(beyond, at) : azimuthBetween(at, beyond);
  return TURNS.map((turn) => ({ from: at, azimuth: azimuth + turn }));
}

function meetings(from: readonly Line[], to: readonly Line[]): readonly (Point | null)[] {
  return from.flatMap((a) => to.map((b) => meeting(a, b)));
}

/** Where a leg on a line of one neighbour turns by a bend into one that leads to the other. */
function turningBetween(
  before: Point,
  after: Point,
  from: readonly Line[],
  to: readonly Line[],
): readonly (Point | null)[] {
  const onFrom = from.flatMap((a) =>
    TURNS.map((turn) => meeting(a, { from: after, azimuth: a.azimuth + turn })),
  );
  const onTo = to.flatMap((b) =>
    TURNS.map((turn) => meeting({ from: before, azimuth: b.azimuth - turn }, b)),
  );
  return [...onFrom, ...onTo];
}

/** The nearest places from which two points are seen under the angle of a bend: on arcs through both (inscribed angles, Euclid III.21). */
function onArcs(a: Point, b: Point, p: Point): readonly (Point | null)[] {
  const chord = distance(a, b);
  if (chord < LEAST_LEG_M) return [];
  const side = Math.sign(cross(subtract(b, a), subtract(p, a))) || 1;
  const square = azimuthBetween(a, b) + (side > 0 ? -Math.PI / 2 : Math.PI / 2);
  return drainBends.map(({ turn }) => {
    const centre = pointAtAzimuth(midpoint(a, b), square, -chord / (2 * Math.tan(turn)));
    const radius = chord / (2 * Math.sin(turn));
    const out = distance(centre, p);
    return out < LEAST_LEG_M ? null : add(centre, scale(subtract(p, centre), radius / out));
  });
}

function footOn({ from, azimuth }: Line, p: Point): Point | null {
  const along = distance(from, p) * Math.cos(azimuthBetween(from, p) - azimuth);
  return pointAtAzimuth(from, azimuth, along);
}

/** Null for lines that are parallel. */
function meeting(a: Line, b: Line): Point | null {
  const [u, v] = [pointAtAzimuth({ x: 0, y: 0 }, a.azimuth, 1), pointAtAzimuth({ x: 0, y: 0 }, b.azimuth, 1)];
  const across = cross(u, v);
  if (Math.abs(across) < SAME_TURN_RAD) return null;
  return add(a.from, scale(u, cross(subtract(b.from, a.from), v) / across));
}

/** At how many of a point and its two neighbours the pipe turns as a bend does. */
function turnsKept(points: readonly Point[], index: number): number {
  return [index - 1, index, index + 1].filter((i) => {
    const [a, b, c] = [points[i - 1], points[i], points[i + 1]];
    if (a === undefined || b === undefined || c === undefined) return false;
    if (distance(a, b) < LEAST_LEG_M || distance(b, c) < LEAST_LEG_M) return false;
    const turn = deflectionBetween(azimuthBetween(a, b), azimuthBetween(b, c));
    return TURNS.some((t) => Math.abs(t - turn) < SAME_TURN_RAD);
  }).length;
}
