import {
  azimuthBetween,
  fail,
  locate,
  nearestOnSegment,
  ok,
  type PathPlace,
  type Point,
  pointAtAzimuth,
  pointInRing,
  type Result,
} from '@footmark/geometry';
import type { RouteRequest } from '@footmark/route';
import type { Derived, Site } from '@footmark/site';
import { type RerouteAsk, stationsOf } from './ask';
import { type AllowedEnd, AT_END_M, endsOf } from './endsOf';
import { offBend } from './offBend';
import { type Between, depthAt, invertAt, siteRequest, type Treated, treatedOn } from './siteRequest';

/** A request with what it minds, and how; and onto which pipe each of its ends leads, by its id. */
export type Rerouting = {
  readonly request: RouteRequest;
  readonly minded: readonly Treated[];
  readonly onto: ReadonlyMap<string, string>;
};

/** Why nothing is asked for: the pipe has no line, the stations leave nothing of it to replace, or where it should arrive is not there. */
export type NothingAsked = 'no-line' | 'nothing-between' | 'no-end';

/** The request that an ask comes to. */
export function requestOf(site: Site, derived: Derived, ask: RerouteAsk): Result<Rerouting, NothingAsked> {
  const cut = cutOf(derived, ask);
  if (!cut.ok) return cut;
  const { from, start, ends } = cut.value;
  const between = placesOf(derived, cut.value, ask);
  const minded = treatedOn(site, derived, ask, between, ask.treat);
  const { startInvert } = ask.otherwise;
  return ok({
    minded,
    onto: new Map(ends.flatMap(({ end, onto }) => (onto === null ? [] : [[end.id, onto]]))),
    request: {
      ...siteRequest(site, ask, between, minded),
      start: {
        at: start.point,
        heading: ask.leaves === 'square' ? squareToWall(derived, start.point, start.azimuth) : start.azimuth,
        invert: startInvert ?? invertAt(derived, ask.path, from),
      },
      ends: ends.map(({ end }) => end),
    },
  });
}

/** What a new pipe minds by an ask, before any is looked for; nothing where there is no request. */
export function mindedBy(site: Site, derived: Derived, ask: RerouteAsk): readonly Treated[] {
  const cut = cutOf(derived, ask);
  return cut.ok ? treatedOn(site, derived, ask, placesOf(derived, cut.value, ask), ask.treat) : [];
}

/** Between which places a new pipe would run; null where there is no request. */
export function betweenOf(derived: Derived, ask: RerouteAsk): Between | null {
  const cut = cutOf(derived, ask);
  return cut.ok ? placesOf(derived, cut.value, ask) : null;
}

/** Where the old pipe is left, at a station (plan m), and where the new one may arrive. */
type Cut = { readonly from: number; readonly start: PathPlace; readonly ends: readonly AllowedEnd[] };

function cutOf(derived: Derived, ask: RerouteAsk): Result<Cut, NothingAsked> {
  const on = derived.paths.get(ask.path);
  if (on === undefined || on.length === 0) return fail('no-line');
  const { from, to } = stationsOf(ask, on.length);
  if (to - from < AT_END_M) return fail('nothing-between');
  const ends = endsOf(derived, ask);
  if (ends.length === 0) return fail('no-end');
  return ok({ from, start: locate(on.line, offBend(on, from, 'after')), ends });
}

function placesOf(derived: Derived, { from, start, ends }: Cut, ask: RerouteAsk): Between {
  return {
    start: { at: start.point, depth: depthAt(derived, ask.path, from) },
    ends: ends.flatMap(({ end: { at }, depth }) =>
      'from' in at
        ? [
            { at: at.from, depth },
            { at: at.to, depth },
          ]
        : [{ at, depth }],
    ),
  };
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
