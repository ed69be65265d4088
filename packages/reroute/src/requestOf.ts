import { azimuthBetween, locate, nearestOnSegment, type Point } from '@footmark/geometry';
import type { Headings, RouteRequest } from '@footmark/route';
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
  const [start, end] = [locate(on.line, from), locate(on.line, to)];
  const invert = (station: number) =>
    profile === undefined ? null : (profileAt(profile, station).pipe?.invert ?? null);
  const minded = mindedOn(site, derived, { start: start.point, end: end.point }).map((m) => ({
    ...m,
    treatment: ask.treat[m.id] ?? m.usual,
  }));
  const wall = 2 * wallShares[ask.material].value;
  return {
    minded,
    request: {
      start: {
        at: start.point,
        heading: ask.leaves === 'square' ? squareToWall(derived, start.point, start.azimuth) : start.azimuth,
        invert: invert(from),
      },
      ends: [{ id: 'end', at: end.point, headings: headingsAt(on, to, end.azimuth), invert: invert(to) }],
      diameter: ask.diameter * (1 + wall),
      bends: bendTable(site),
      leastStraight: ruleValue(site, 'routeStraight'),
      mostBends: Math.round(ruleValue(site, 'routeBends')),
      obstacles: minded.flatMap(({ id, shape, treatment }) =>
        treatment.as === 'clear' ? [{ id, shape, clearance: treatment.clearance }] : [],
      ),
      areas: minded.flatMap(({ id, shape, treatment }) =>
        treatment.as === 'cost' && treatment.perMetre > 0
          ? [{ id, shape, perMetre: treatment.perMetre }]
          : [],
      ),
      freeEnds: ruleValue(site, 'routeEnds'),
      grade: { least: leastFall(site, ask.diameter).value, kept: ask.keepsGrade },
    },
  };
}

/** At the very end of a pipe a new fitting is turned as it must be; into a pipe that goes on, a wye. */
function headingsAt({ length }: DerivedPath, station: number, flow: number): readonly Headings[] | null {
  return length - station < AT_END_M ? null : [{ from: flow - WYE_RAD, to: flow + WYE_RAD }];
}

/** Straight away from the nearest wall of a building; as the pipe lies where there is none. */
function squareToWall({ features }: Derived, at: Point, along: number): number {
  let best: { readonly distance: number; readonly heading: number } | null = null;
  for (const { feature, outline } of features.values()) {
    if (feature.kind !== 'building') continue;
    for (const [i, a] of outline.entries()) {
      const b = outline[i + 1] ?? outline[0];
      if (b === undefined) continue;
      const { distance } = nearestOnSegment(at, a, b);
      if (best !== null && distance >= best.distance) continue;
      const across = azimuthBetween(a, b) + Math.PI / 2;
      best = { distance, heading: Math.cos(across - along) >= 0 ? across : across + Math.PI };
    }
  }
  return best?.heading ?? along;
}
