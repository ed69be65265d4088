import type { Route } from '../foundRoute';
import type { RouteRequest } from '../request';
import { centreLine, developedLength } from './centreLine';
import { clearanceFaults } from './clearanceFaults';
import { endFaults } from './endFaults';
import { bendAt, fittingFaults } from './fittingFaults';
import type { RouteFault } from './routeFault';
import { LENGTH_M } from './tolerances';

/** Holds a route against every clause of its request, by measuring along its centre line. Sound: none. */
export function checkRoute(request: RouteRequest, route: Route): readonly RouteFault[] {
  const { points } = route;
  if (points.length < 2 || !points.every((p) => Number.isFinite(p.x) && Number.isFinite(p.y))) {
    return [{ code: 'no-line', at: request.start.at, values: { points: points.length } }];
  }
  const radii = points.slice(1, -1).map((_, i) => bendAt(request, route, i + 1)?.radius ?? 0);
  const line = centreLine(points, radii);
  return [
    ...endFaults(request, route),
    ...fittingFaults(request, route),
    ...clearanceFaults(request, route, line),
    ...fallFaults(request, route, developedLength(line)),
  ];
}

function fallFaults(
  { start, ends, grade }: RouteRequest,
  route: Route,
  developed: number,
): readonly RouteFault[] {
  const invert = ends.find((e) => e.id === route.end)?.invert ?? null;
  if (!grade.kept || start.invert === null || invert === null) return [];
  const needed = developed * grade.least;
  const available = start.invert - invert;
  if (needed <= available + LENGTH_M) return [];
  return [{ code: 'too-little-fall', at: start.at, values: { needed, available } }];
}
