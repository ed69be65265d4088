import { azimuthBetween, distance, normalizeAzimuth, type Point, signedAngle } from '@footmark/geometry';
import type { Route } from '../foundRoute';
import type { Headings, RouteEnd, RouteRequest } from '../request';
import { edgeDistance } from './edgeDistance';
import type { RouteFault } from './routeFault';
import { ANGLE_RAD, LENGTH_M, PLACE_M } from './tolerances';

/** Of where the route starts and arrives, and of its headings there. */
export function endFaults(request: RouteRequest, route: Route): readonly RouteFault[] {
  return [...startFaults(request, route), ...arrivalFaults(request, route)];
}

function startFaults({ start }: RouteRequest, { points }: Route): readonly RouteFault[] {
  const faults: RouteFault[] = [];
  const [at, next] = points;
  if (at === undefined || next === undefined) return faults;
  const away = distance(at, start.at);
  if (away > PLACE_M) faults.push({ code: 'start-elsewhere', at, values: { away } });
  const heading = headingOf(at, next);
  if (heading !== null && Math.abs(signedAngle(heading - start.heading)) > ANGLE_RAD) {
    faults.push({ code: 'start-heading', at, values: { heading, asked: start.heading } });
  }
  return faults;
}

function arrivalFaults({ ends }: RouteRequest, { points, end: id }: Route): readonly RouteFault[] {
  const faults: RouteFault[] = [];
  const [before, at] = points.slice(-2);
  if (before === undefined || at === undefined) return faults;
  const end = ends.find((e) => e.id === id);
  if (end === undefined) return [{ code: 'unknown-end', at, values: { end: id } }];
  const away = awayFrom(end, at);
  if (away > PLACE_M) faults.push({ code: 'end-elsewhere', at, values: { end: id, away } });
  const heading = headingOf(before, at);
  if (heading !== null && end.headings !== null && !end.headings.some((among) => isAmong(heading, among))) {
    faults.push({ code: 'end-heading', at, values: { end: id, heading } });
  }
  return faults;
}

/** Null for a leg without length. */
function headingOf(from: Point, to: Point): number | null {
  return distance(from, to) <= LENGTH_M ? null : azimuthBetween(from, to);
}

function awayFrom({ at }: RouteEnd, p: Point): number {
  if ('x' in at) return distance(p, at);
  return edgeDistance(p, { is: 'line', points: [at.from, at.to], halfWidth: 0 });
}

function isAmong(heading: number, { from, to }: Headings): boolean {
  if (to - from >= 2 * Math.PI) return true;
  const past = normalizeAzimuth(heading - from);
  return past <= normalizeAzimuth(to - from) + ANGLE_RAD || past >= 2 * Math.PI - ANGLE_RAD;
}
