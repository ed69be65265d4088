import { azimuthBetween, deflectionBetween, type Point } from '@footmark/geometry';
import { type Bend, checkRoute, type Route, type RouteFault, type RouteRequest } from '@footmark/route';
import { type Derived, type DerivedPath, DRAWN_TURN_RAD, type Site } from '@footmark/site';
import { depthAt, invertAt, siteRequest, treatedOn } from './siteRequest';

/** What is wrong with a drawn pipe, and whether its fall was judged: that needs the inverts of both its ends. */
export type PathCheck = { readonly faults: readonly RouteFault[]; readonly fallJudged: boolean };

/**
 * What is wrong with a drawn pipe, were it a route: turns that no standard bend makes, legs too short for their fittings, too near to things, too
 * little fall. Null for a pipe that has no line. Turns are drawn as true as a degree.
 */
export function checkPath(site: Site, derived: Derived, path: string): PathCheck | null {
  const on = derived.paths.get(path);
  const [start, second] = on?.points ?? [];
  const end = on?.points.at(-1);
  if (on === undefined || start === undefined || second === undefined || end === undefined) return null;
  const [stretch] = on.path.stretches;
  const pipe = {
    diameter: stretch?.diameter ?? 0,
    material: stretch?.material ?? 'unknown',
    keepsGrade: true,
    otherwise: {},
  } as const;
  const between = {
    start: { at: start, depth: depthAt(derived, path, 0) },
    ends: [{ at: end, depth: depthAt(derived, path, on.length) }],
  };
  const usual = siteRequest(site, pipe, between, treatedOn(site, derived, pipe, between, {}));
  const [from, to] = [invertAt(derived, path, 0), invertAt(derived, path, on.length)];
  const request: RouteRequest = {
    ...usual,
    start: { at: start, heading: azimuthBetween(start, second), invert: from },
    ends: [{ id: 'end', at: end, headings: null, invert: to }],
    bends: [...usual.bends, STRAIGHT],
    mostBends: usual.mostBends + straightPoints(on),
  };
  const faults = checkRoute(request, nearestRoute(on, request.bends)).filter((fault) => !isDrawn(fault));
  return { faults, fallJudged: from !== null && to !== null };
}

/** A point that does not turn has no fitting. */
const STRAIGHT: Bend = { id: 'straight', turn: 0, radius: 0, laying: 0, cost: 0 };

function straightPoints({ points }: DerivedPath): number {
  return points.slice(1, -1).filter((p, i) => isStraight(turnAt(points[i] ?? p, p, points[i + 2] ?? p)))
    .length;
}

function isStraight(turn: number): boolean {
  return Math.abs(turn) <= DRAWN_TURN_RAD;
}

/** The drawn line with the standard bend at each point that turns most like it. */
function nearestRoute({ points }: DerivedPath, bends: readonly Bend[]): Route {
  return {
    points,
    end: 'end',
    bends: points.slice(1, -1).map((p, i) => {
      const turn = turnAt(points[i] ?? p, p, points[i + 2] ?? p);
      const [nearest] = isStraight(turn)
        ? [STRAIGHT]
        : bends.toSorted((a, b) => Math.abs(a.turn - Math.abs(turn)) - Math.abs(b.turn - Math.abs(turn)));
      return { bend: nearest?.id ?? '', to: turn < 0 ? 'left' : 'right' };
    }),
  };
}

function turnAt(before: Point, p: Point, after: Point): number {
  return deflectionBetween(azimuthBetween(before, p), azimuthBetween(p, after));
}

/** No hand draws a turn truer than that. */
function isDrawn(fault: RouteFault): boolean {
  if (fault.code !== 'wrong-turn') return false;
  const { turn, asked } = fault.values;
  return Math.abs(turn - asked) <= DRAWN_TURN_RAD;
}
