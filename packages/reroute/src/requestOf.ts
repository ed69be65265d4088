import {
  azimuthBetween,
  locate,
  nearestOnSegment,
  type PathPlace,
  type Point,
  pointAtAzimuth,
  pointInRing,
} from '@footmark/geometry';
import type { Headings, RouteRequest } from '@footmark/route';
import type { Derived, DerivedPath, Site } from '@footmark/site';
import { type RerouteAsk, stationsOf } from './ask';
import { invertAt, siteRequest, type Treated, treatedOn } from './siteRequest';

/** A request with what it minds, and how. */
export type Rerouting = {
  readonly request: RouteRequest;
  readonly minded: readonly Treated[];
};

/** A wye lies level or rolled up: seen from above its branch comes in at up to 45 degrees to the flow. */
const WYE_RAD = Math.PI / 4;
/** A station this near (m) to the end of a pipe is its end. */
const AT_END_M = 0.05;

/** The request that an ask comes to; null when its pipe has no line, or nothing lies between its stations. */
export function requestOf(site: Site, derived: Derived, ask: RerouteAsk): Rerouting | null {
  const cuts = cutsOf(derived, ask);
  if (cuts === null) return null;
  const { on, from, to, start, end } = cuts;
  const minded = mindedBetween(site, derived, cuts, ask);
  return {
    minded,
    request: {
      ...siteRequest(site, ask, minded),
      start: {
        at: start.point,
        heading: ask.leaves === 'square' ? squareToWall(derived, start.point, start.azimuth) : start.azimuth,
        invert: invertAt(derived, ask.path, from),
      },
      ends: [
        {
          id: 'end',
          at: end.point,
          headings: headingsAt(on, to, end.azimuth),
          invert: invertAt(derived, ask.path, to),
        },
      ],
    },
  };
}

/** What a new pipe minds by an ask, before any is looked for; nothing where there is no request. */
export function mindedBy(site: Site, derived: Derived, ask: RerouteAsk): readonly Treated[] {
  const cuts = cutsOf(derived, ask);
  return cuts === null ? [] : mindedBetween(site, derived, cuts, ask);
}

/** Where the old pipe is cut: its stations (plan metres), and the line there. */
type Cuts = {
  readonly on: DerivedPath;
  readonly from: number;
  readonly to: number;
  readonly start: PathPlace;
  readonly end: PathPlace;
};

function cutsOf({ paths }: Derived, ask: RerouteAsk): Cuts | null {
  const on = paths.get(ask.path);
  if (on === undefined || on.length === 0) return null;
  const { from, to } = stationsOf(ask, on.length);
  if (to - from < AT_END_M) return null;
  return {
    on,
    from,
    to,
    start: locate(on.line, offBend(on, from, 'after')),
    end: locate(on.line, offBend(on, to, 'before')),
  };
}

function mindedBetween(
  site: Site,
  derived: Derived,
  { start, end }: Cuts,
  { treat }: RerouteAsk,
): readonly Treated[] {
  return treatedOn(site, derived, { start: start.point, end: end.point }, treat);
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
