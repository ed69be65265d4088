import type { Route } from '../foundRoute';
import type { Area, Obstacle, RouteRequest } from '../request';
import { type Field, fieldOf } from './field';
import { type BestRoute, type Found, type LegSearch, legSearch } from './legSearch';
import { areasCrossed, obstaclesHit } from './routeHits';
import { type Solid, solidOf } from './solid';
import { turnSteps } from './turns';

/** What the cheapest route had to look at, kept for the next search on the same site. */
export type Regarded = {
  readonly obstacles: Set<Obstacle>;
  readonly areas: Set<Area>;
  readonly field: Field;
};

export function regardedFor(request: RouteRequest): Regarded {
  return { obstacles: new Set(), areas: new Set(), field: fieldOf(request) };
}

/** A first route may cost so many times what the best does; where that costs too much looking, so many times. */
const SOON = [1.5, 3, 8] as const;
const MOST_PLACES_SOON = 4000;

/** The same of each that is then looked for: of the best route, and of one that stands beside it. */
export const BEST: readonly number[] = [1.1, 1.05, 1.02];
export const GOOD: readonly number[] = [1.1];

/** Looks no further than this many places for a route that is a little cheaper. */
const MOST_PLACES_TO_BETTER = 700;

export type BestOptions = {
  readonly regarded: Regarded;
  /** More that the centre line may not cross; legs do not run along it. */
  readonly fences?: readonly Solid[];
  readonly mostPlaces: number;
  /** Routes that cost as much are of no use. */
  readonly below?: number;
  /** How much dearer than the best it may be, time after time; absent: the first that is found will do. */
  readonly better?: readonly number[];
  readonly shouldStop: () => boolean;
};

/**
 * The cheapest route of a request. Obstacles and areas are regarded as they are met: what is best with some of them and meets none of the
 * others is best with all.
 */
export function bestRoute(
  request: RouteRequest,
  { regarded, fences = [], mostPlaces, below = Infinity, better = [], shouldStop }: BestOptions,
): BestRoute {
  const steps = turnSteps(request);
  const field = fences.length === 0 ? regarded.field : fieldOf(request, fences);
  for (;;) {
    const obstacles = request.obstacles.filter((o) => regarded.obstacles.has(o));
    const solids = obstacles.map((o) => solidOf(request, o));
    const areas = request.areas.filter((a) => regarded.areas.has(a));
    const search = {
      request: { ...request, areas },
      steps,
      solids: [...solids, ...fences],
      beside: [
        ...solids.map(({ shape, need }) => ({ shape, reach: need })),
        ...areas.map(({ shape }) => ({ shape, reach: 0 })),
      ],
      field,
      accept: (route: Route) => obstaclesHit(request, route, obstacles).length === 0,
      mostPlaces,
      shouldStop,
    };
    // a route that is good enough is found soon; what costs more need not be looked at then
    const soon = foundSoon(search, below);
    if (soon.is !== 'found') return soon;
    if (regardMore(request, soon.route, regarded)) continue;
    const best = bettered(search, soon, better);
    if (best.is !== 'found' || !regardMore(request, best.route, regarded)) return best;
  }
}

/** Any route: with more greed where less of it finds none in good time. */
function foundSoon(search: Omit<LegSearch, 'greed' | 'below'>, below: number): BestRoute {
  let last: BestRoute = { is: 'gave-up' };
  for (const greed of SOON) {
    const mostPlaces =
      greed === SOON.at(-1) ? search.mostPlaces : Math.min(MOST_PLACES_SOON, search.mostPlaces / 3);
    last = legSearch({ ...search, greed, below, mostPlaces });
    if (last.is !== 'gave-up') return last;
  }
  return last;
}

/** A route with the cheaper ones that less and less greed finds, until one costs too much looking. */
function bettered(
  search: Omit<LegSearch, 'greed' | 'below'>,
  soon: Found,
  better: readonly number[],
): BestRoute {
  let best = soon;
  for (const greed of better) {
    const mostPlaces = Math.min(search.mostPlaces, MOST_PLACES_TO_BETTER);
    const next = legSearch({ ...search, greed, below: best.cost, mostPlaces });
    if (next.is === 'stopped') return next;
    if (next.is === 'found') best = next;
    if (next.is === 'gave-up') break;
  }
  return best;
}

/** Regards what a route meets besides; false when there is nothing. */
function regardMore(request: RouteRequest, route: Route, regarded: Regarded): boolean {
  const others = request.obstacles.filter((o) => !regarded.obstacles.has(o));
  const hit = obstaclesHit(request, route, others);
  const crossed = areasCrossed(request, route).flatMap(({ area }) =>
    regarded.areas.has(area) ? [] : [area],
  );
  for (const obstacle of hit) regarded.obstacles.add(obstacle);
  for (const area of crossed) regarded.areas.add(area);
  return hit.length + crossed.length > 0;
}
