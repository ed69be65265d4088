import { distance, nearestOnSegment, type Point, tangentLength } from '@footmark/geometry';
import type { Bend, Obstacle, RouteEnd, RouteRequest, Shape } from '../request';
import { alongToEnd } from './arrival';
import { numberProblems } from './badNumbers';
import { directionOf } from './direction';
import { rayInShape } from './rayInShape';
import type { RequestProblem } from './requestProblem';
import { shapeDistance } from './shapeDistance';
import { lengthUpTo } from './spans';
import { ON_THE_WALL_M } from './tolerances';

/** Places nearer to each other than this (m) are one. */
const ONE_PLACE_M = 1e-3;
/** A laying length is given to so much (m). */
const LAYING_M = 1e-6;

/** A request that makes sense, without the ends that do not; else what is wrong with it. */
export type SoundRequest =
  | { readonly is: 'sound'; readonly request: RouteRequest }
  | { readonly is: 'wrong'; readonly problems: readonly RequestProblem[] };

/**
 * What can be told before a search. Something wrong with one end is no problem while another is left. With numbers that are none, nothing else
 * is looked at.
 */
export function soundRequest(request: RouteRequest): SoundRequest {
  const numbers = numberProblems(request);
  if (numbers.length > 0) return { is: 'wrong', problems: numbers };
  const ends = request.ends.map((end) => ({ end, problems: endProblems(request, end) }));
  const good = ends.flatMap(({ end, problems }) => (problems.length === 0 ? [end] : []));
  const problems = [
    ...request.bends.flatMap(bendProblems),
    ...startProblems(request),
    ...(request.ends.length === 0 ? [{ code: 'no-end', values: {} } as const] : []),
    ...(good.length === 0 ? ends.flatMap((e) => e.problems) : wayProblems({ ...request, ends: good })),
  ];
  return problems.length > 0
    ? { is: 'wrong', problems }
    : { is: 'sound', request: good.length === ends.length ? request : { ...request, ends: good } };
}

function bendProblems({ id, turn, radius, laying }: Bend): readonly RequestProblem[] {
  if (turn <= 0 || turn >= Math.PI) return [{ code: 'bend-turn', values: { bend: id, turn } }];
  const tangent = tangentLength(radius, turn);
  return laying < tangent - LAYING_M ? [{ code: 'bend-laying', values: { bend: id, laying, tangent } }] : [];
}

function startProblems({ start, obstacles }: RouteRequest): readonly RequestProblem[] {
  return obstacles.flatMap(({ id, shape }): RequestProblem[] => {
    const depth = -shapeDistance(start.at, shape);
    return depth > ON_THE_WALL_M ? [{ code: 'start-inside', values: { obstacle: id, depth } }] : [];
  });
}

function endProblems(request: RouteRequest, end: RouteEnd): readonly RequestProblem[] {
  const { start, obstacles } = request;
  if (awayFrom(end, start.at) <= ONE_PLACE_M) return [{ code: 'start-is-end', values: { end: end.id } }];
  const inside = obstacles.flatMap(({ id, shape }): RequestProblem[] => {
    const depth = depthOf(end, shape);
    return depth > ON_THE_WALL_M
      ? [{ code: 'end-inside', values: { end: end.id, obstacle: id, depth } }]
      : [];
  });
  return [...inside, ...fallProblems(request, end)];
}

function fallProblems({ start, grade }: RouteRequest, end: RouteEnd): readonly RequestProblem[] {
  if (start.invert === null || end.invert === null) return [];
  const available = start.invert - end.invert;
  if (available < 0 || (available === 0 && grade.least > 0)) {
    return [{ code: 'end-not-lower', values: { end: end.id, rise: 0 - available } }];
  }
  const needed = grade.least * awayFrom(end, start.at);
  return grade.kept && needed > available
    ? [{ code: 'too-little-fall', values: { end: end.id, needed, available } }]
    : [];
}

/** Of the way from the start to ends that are good by themselves. */
function wayProblems(request: RouteRequest): readonly RequestProblem[] {
  const { start, ends, bends, obstacles } = request;
  const ahead = directionOf(start.heading);
  const isAhead = ends.some((end) => (alongToEnd(start.at, ahead, end) ?? -1) >= 0);
  return [
    ...(bends.length === 0 && !isAhead ? [{ code: 'no-bends', values: {} } as const] : []),
    ...obstacles.flatMap((obstacle) => groundProblems(request, obstacle)),
  ];
}

/**
 * Near the start and near an end, within the free ends, an obstacle's clearance is waived: when none of that ground is as far from the
 * obstacle as it asks, no way leads out of either.
 */
function groundProblems(
  { start, ends, freeEnds, diameter }: RouteRequest,
  { id, shape, clearance }: Obstacle,
): readonly RequestProblem[] {
  const ways = ends.map((end) => ({ end, away: awayFrom(end, start.at) }));
  if (ways.some(({ away }) => away <= 2 * freeEnds)) return [];
  const furthest = Math.max(...ends.map((end) => furthestFrom(end, shape)));
  const most = Math.min(shapeDistance(start.at, shape), furthest) + freeEnds - diameter / 2;
  const swallowed = Math.max(shapeDistance(start.at, shape), furthest) + freeEnds - diameter / 2 < clearance;
  return swallowed
    ? [{ code: 'no-ground', values: { obstacle: id, clearance, most: Math.max(0, most) } }]
    : [];
}

function awayFrom({ at }: RouteEnd, p: Point): number {
  return 'x' in at ? distance(at, p) : nearestOnSegment(p, at.from, at.to).distance;
}

/** How deep (m) an end lies in a shape; of a piece that is not wholly in it 0, else of its shallower end. */
function depthOf({ at }: RouteEnd, shape: Shape): number {
  if ('x' in at) return -shapeDistance(at, shape);
  const depth = Math.min(-shapeDistance(at.from, shape), -shapeDistance(at.to, shape));
  const length = distance(at.from, at.to);
  if (depth <= 0 || length === 0) return depth;
  const ahead = { x: (at.to.x - at.from.x) / length, y: (at.to.y - at.from.y) / length };
  const inside = lengthUpTo(rayInShape({ from: at.from, ahead }, shape, 0), length);
  return inside >= length - ON_THE_WALL_M ? depth : 0;
}

/** No place of an end is further (m) from a shape than this. */
function furthestFrom({ at }: RouteEnd, shape: Shape): number {
  if ('x' in at) return shapeDistance(at, shape);
  // a metre along the piece brings no more than a metre: what lies between its ends is no further than half its length from either
  const [a, b] = [shapeDistance(at.from, shape), shapeDistance(at.to, shape)];
  return (a + b + distance(at.from, at.to)) / 2;
}
