import {
  azimuthBetween,
  locate,
  nearestOnSegment,
  type Point,
  pointAtAzimuth,
  pointInRing,
} from '@footmark/geometry';
import type { Headings, RouteRequest, Shape } from '@footmark/route';
import {
  type Derived,
  type DerivedPath,
  leastFall,
  profileAt,
  ruleValue,
  type Site,
  wallShares,
} from '@footmark/site';
import { type RerouteAsk, stationsOf } from './ask';
import { bendTable } from './bendTable';
import { type Minded, mindedOn, type Treatment } from './treatment';

/** A request with what it minds, and how. */
export type Rerouting = {
  readonly request: RouteRequest;
  readonly minded: readonly (Minded & { readonly treatment: Treatment })[];
};

/** A wye lies level or rolled up: seen from above its branch comes in at up to 45 degrees to the flow. */
const WYE_RAD = Math.PI / 4;
/** A station this near (m) to the end of a pipe is its end. */
const AT_END_M = 0.05;

/** The request that an ask comes to; null when its pipe has no line, or nothing lies between its stations. */
export function requestOf(site: Site, derived: Derived, ask: RerouteAsk): Rerouting | null {
  const on = derived.paths.get(ask.path);
  const profile = derived.profiles.get(ask.path);
  if (on === undefined || on.length === 0) return null;
  const { from, to } = stationsOf(ask, on.length);
  if (to - from < AT_END_M) return null;
  const [start, end] = [
    locate(on.line, offBend(on, from, 'after')),
    locate(on.line, offBend(on, to, 'before')),
  ];
  const invert = (station: number) =>
    profile === undefined ? null : (profileAt(profile, station).pipe?.invert ?? null);
  const minded = mindedOn(site, derived, { start: start.point, end: end.point }).map((m) => ({
    ...m,
    treatment: ask.treat[m.id] ?? m.usual,
  }));
  const diameter = ask.diameter * (1 + 2 * wallShares[ask.material].value);
  return {
    minded,
    request: {
      start: {
        at: start.point,
        heading: ask.leaves === 'square' ? squareToWall(derived, start.point, start.azimuth) : start.azimuth,
        invert: invert(from),
      },
      ends: [{ id: 'end', at: end.point, headings: headingsAt(on, to, end.azimuth), invert: invert(to) }],
      diameter,
      bends: bendTable(site),
      leastStraight: ruleValue(site, 'routeStraight'),
      mostBends: Math.round(ruleValue(site, 'routeBends')),
      obstacles: minded.flatMap(({ id, shape, treatment }) =>
        treatment.as === 'clear' ? [{ id, shape, clearance: treatment.clearance }] : [],
      ),
      areas: minded.flatMap(({ id, shape, treatment }) =>
        treatment.as === 'cost' && treatment.perMetre > 0
          ? [{ id, shape: fromOutside(shape, diameter / 2), perMetre: treatment.perMetre }]
          : [],
      ),
      freeEnds: ruleValue(site, 'routeEnds'),
      grade: { least: leastFall(site, ask.diameter).value, kept: ask.keepsGrade },
    },
  };
}

/** At the very end of a pipe a new fitting is turned as it must be, but for back where it came from; into a pipe that goes on, a wye. */
function headingsAt({ length }: DerivedPath, station: number, flow: number): readonly Headings[] {
  const wide = length - station < AT_END_M ? Math.PI / 2 : WYE_RAD;
  return [{ from: flow - wide, to: flow + wide }];
}

/** A station that is not within a bend: a pipe is cut where it is straight. */
function offBend({ line, length }: DerivedPath, station: number, to: 'before' | 'after'): number {
  for (const [i, element] of line.elements.entries()) {
    const [from, end] = [line.starts[i] ?? 0, line.starts[i + 1] ?? length];
    if (element.kind === 'arc' && station > from && station < end) return to === 'after' ? end : from;
  }
  return station;
}

/** Beside a line it is the pipe's outside that counts. */
function fromOutside(shape: Shape, radius: number): Shape {
  return shape.is === 'line' ? { ...shape, halfWidth: shape.halfWidth + radius } : shape;
}

/** A wall this near (m) is the one that the pipe comes out of. */
const AT_WALL_M = 1;

/** Straight out of the wall that it comes through; as the pipe lies where there is none. */
function squareToWall({ features }: Derived, at: Point, along: number): number {
  let best: { readonly distance: number; readonly heading: number } | null = null;
  for (const { feature, outline } of features.values()) {
    if (feature.kind !== 'building') continue;
    for (const [i, a] of outline.entries()) {
      const b = outline[i + 1] ?? outline[0];
      if (b === undefined) continue;
      const { distance, point } = nearestOnSegment(at, a, b);
      if (distance > (best?.distance ?? AT_WALL_M)) continue;
      const across = azimuthBetween(a, b) + Math.PI / 2;
      const out =
        pointInRing(pointAtAzimuth(point, across, STEP_M), outline) === 'inside' ? across + Math.PI : across;
      best = { distance, heading: out };
    }
  }
  return best?.heading ?? along;
}

/** So far (m) off a wall it is told which of its sides is out of doors. */
const STEP_M = 0.01;
