import { azimuthBetween, deflectionBetween, distance } from '@footmark/geometry';
import type { Route } from '../foundRoute';
import type { Bend, RouteRequest } from '../request';
import type { RouteFault } from './routeFault';
import { ANGLE_RAD, LENGTH_M } from './tolerances';

/** Of the bends, the turns at them, and the legs between. */
export function fittingFaults(request: RouteRequest, route: Route): readonly RouteFault[] {
  return [...bendFaults(request, route), ...turnFaults(request, route), ...legFaults(request, route)];
}

/** The request's bend at a vertex; null at start and end, where none is given and where it is not known. */
export function bendAt(request: RouteRequest, route: Route, vertex: number): Bend | null {
  const given = route.bends[vertex - 1];
  if (given === undefined || vertex >= route.points.length - 1) return null;
  return request.bends.find((b) => b.id === given.bend) ?? null;
}

function bendFaults(
  { bends: known, mostBends }: RouteRequest,
  { bends, points }: Route,
): readonly RouteFault[] {
  const faults: RouteFault[] = [];
  const [first = { x: 0, y: 0 }] = points;
  const vertices = points.length - 2;
  if (bends.length !== vertices) {
    faults.push({ code: 'bend-count', at: first, values: { bends: bends.length, vertices } });
  }
  const most = Math.max(bends.length, vertices);
  if (most > mostBends) {
    faults.push({ code: 'too-many-bends', at: first, values: { bends: most, most: mostBends } });
  }
  for (const [i, { bend }] of bends.entries()) {
    if (known.some((b) => b.id === bend)) continue;
    faults.push({ code: 'unknown-bend', at: points[i + 1] ?? first, values: { vertex: i + 1, bend } });
  }
  return faults;
}

function turnFaults(request: RouteRequest, route: Route): readonly RouteFault[] {
  const faults: RouteFault[] = [];
  for (const [i, at] of route.points.entries()) {
    const [before, after] = [route.points[i - 1], route.points[i + 1]];
    const bend = bendAt(request, route, i);
    if (before === undefined || after === undefined || bend === null) continue;
    // a leg without length has no heading: it is too short
    if (distance(before, at) <= LENGTH_M || distance(at, after) <= LENGTH_M) continue;
    const turn = deflectionBetween(azimuthBetween(before, at), azimuthBetween(at, after));
    const asked = route.bends[i - 1]?.to === 'left' ? -bend.turn : bend.turn;
    if (Math.abs(turn - asked) > ANGLE_RAD) {
      faults.push({ code: 'wrong-turn', at, values: { vertex: i, bend: bend.id, turn, asked } });
    }
  }
  return faults;
}

function legFaults(request: RouteRequest, route: Route): readonly RouteFault[] {
  const faults: RouteFault[] = [];
  for (const [leg, from] of route.points.entries()) {
    const to = route.points[leg + 1];
    if (to === undefined) break;
    const fittings = [bendAt(request, route, leg), bendAt(request, route, leg + 1)].filter((b) => b !== null);
    const straight = fittings.length === 2 ? request.leastStraight : 0;
    const least = fittings.reduce((sum, bend) => sum + takenOfLeg(bend), straight);
    const length = distance(from, to);
    if (length < least - LENGTH_M || length <= LENGTH_M) {
      faults.push({ code: 'short-leg', at: from, values: { leg, length, least } });
    }
  }
  return faults;
}

/** The laying length, and never less than the arc itself needs. */
function takenOfLeg({ laying, radius, turn }: Bend): number {
  return Math.max(laying, radius * Math.tan(turn / 2));
}
