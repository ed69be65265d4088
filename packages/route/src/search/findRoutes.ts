import type { Route } from '../foundRoute';
import type { Obstacle, RouteRequest } from '../request';
import { BEST, bestRoute, GOOD, type Regarded, regardedFor } from './bestRoute';
import { type NoRoute, whyNone } from './blocked';
import { groundOf } from './ground';
import type { BestRoute } from './legSearch';
import { type RatedRoute, rated } from './ratedRoute';
import type { RequestProblem } from './requestProblem';
import { soundRequest } from './requestProblems';
import { fenceAcross, shapedBy, sidesOf } from './sides';
import type { Solid } from './solid';

export type FoundRoutes =
  | { readonly is: 'found'; readonly routes: readonly RatedRoute[] }
  | { readonly is: 'wrong'; readonly problems: readonly RequestProblem[] }
  | NoRoute
  | { readonly is: 'stopped' };

export type RouteOptions = {
  readonly shouldStop?: () => boolean;
  /** Told how much of the work is done, 0 to 1. */
  readonly onProgress?: (share: number) => void;
  /** Looks no further than this many places for one route. */
  readonly mostPlaces?: number;
};

/** So many routes are worth comparing, and a search more for each than that is not. */
const MOST_ROUTES = 5;
const MOST_SEARCHES = 10;
/** A route that costs more than this many times the best is no choice. */
const DEAREST = 2;
/** To find the route with fewer bends, those are taken as so many times as dear. */
const DEAR_BENDS = 5;
const MOST_PLACES = 20_000;
const MOST_PLACES_OF_OTHERS = 750;

/**
 * The cheapest route, then others that truly differ: by the side on which they go by something, or with fewer bends. Cheapest first; the same
 * request has the same answer.
 */
export function findRoutes(
  asked: RouteRequest,
  { shouldStop = () => false, onProgress = () => {}, mostPlaces = MOST_PLACES }: RouteOptions = {},
): FoundRoutes {
  const sound = soundRequest(asked);
  if (sound.is === 'wrong') return sound;
  const { request } = sound;
  const regarded: Regarded = regardedFor(request);
  const ground = groundOf(request);
  const best: BestRoute =
    ground.is === 'apart'
      ? { is: 'none' }
      : bestRoute(request, { regarded, mostPlaces, better: BEST, shouldStop });
  if (best.is === 'stopped') return { is: 'stopped' };
  if (best.is !== 'found')
    return whyNone(request, { ground, regarded, gaveUp: best.is === 'gave-up', shouldStop });
  const other = (request: RouteRequest, fences: readonly Solid[], below: number): BestRoute =>
    bestRoute(request, {
      regarded,
      fences,
      below,
      better: GOOD,
      mostPlaces: Math.min(mostPlaces, MOST_PLACES_OF_OTHERS),
      shouldStop,
    });

  const found: Candidate[] = [candidate(request, best.route, [])];
  const open: { readonly route: Route; readonly fences: readonly Solid[]; readonly round: Obstacle }[] = [];
  const openFrom = ({ route, fences }: Candidate) => {
    for (const round of shapedBy(route, [...regarded.obstacles, ...rootsOf(regarded)], request.diameter / 2))
      if (!fences.some((f) => f.id === round.id)) open.push({ route, fences, round });
  };
  const first = found[0];
  if (first !== undefined) openFrom(first);
  for (let searches = 1; searches < MOST_SEARCHES; searches++) {
    onProgress(searches / MOST_SEARCHES);
    const next = open.shift();
    if (next === undefined) break;
    const fences = [...next.fences, fenceAcross(next.route, next.round)];
    const round = other(request, fences, DEAREST * best.cost);
    if (round.is === 'stopped') return { is: 'stopped' };
    if (round.is !== 'found') continue;
    const one = candidate(request, round.route, fences);
    found.push(one);
    openFrom(one);
  }
  const plain = other(withDearBends(request), [], Infinity);
  if (plain.is === 'stopped') return { is: 'stopped' };
  if (plain.is === 'found') found.push(candidate(request, plain.route, []));
  onProgress(1);
  return { is: 'found', routes: differing(found, [...regarded.obstacles, ...rootsOf(regarded)]) };
}

type Candidate = { readonly route: RatedRoute; readonly fences: readonly Solid[] };

function candidate(request: RouteRequest, route: Route, fences: readonly Solid[]): Candidate {
  return { route: rated(request, route), fences };
}

/** Round ground that costs is gone around on one side or the other, like what stands in it. */
function rootsOf({ areas }: Regarded): readonly Obstacle[] {
  return [...areas].flatMap(({ id, shape }) => (shape.is === 'circle' ? [{ id, shape, clearance: 0 }] : []));
}

function withDearBends(request: RouteRequest): RouteRequest {
  return { ...request, bends: request.bends.map((b) => ({ ...b, cost: DEAR_BENDS * b.cost })) };
}

/** Of those that go by everything on the same sides the cheapest, and the one with the fewest bends where that is another. */
function differing(found: readonly Candidate[], obstacles: readonly Obstacle[]): readonly RatedRoute[] {
  const kept: { readonly sides: string; readonly route: RatedRoute }[] = [];
  const byCost = found.map((c) => c.route).sort((a, b) => a.cost.total - b.cost.total);
  const least = byCost[0]?.cost.total ?? 0;
  for (const route of byCost) {
    const sides = sidesOf(route, obstacles);
    const alike = kept.filter((k) => k.sides === sides);
    const plainer = alike.every((k) => k.route.bends.length > route.bends.length);
    if (route.cost.total <= DEAREST * least && (alike.length === 0 || plainer)) kept.push({ sides, route });
  }
  return kept.slice(0, MOST_ROUTES).map((k) => k.route);
}
