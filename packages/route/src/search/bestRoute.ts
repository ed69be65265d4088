import type { Route } from '../foundRoute';
import type { Area, Obstacle, RouteRequest } from '../request';
import { legSearch } from './legSearch';
import { areasCrossed, obstaclesHit } from './routeHits';
import { type Solid, solidOf } from './solid';
import { turnSteps } from './turns';

/** What the cheapest route had to look at, kept for the next search on the same site. */
export type Regarded = { readonly obstacles: Set<Obstacle>; readonly areas: Set<Area> };

export type BestRoute =
  | { readonly is: 'found'; readonly route: Route; readonly cost: number }
  | { readonly is: 'none' | 'gave-up' | 'stopped' };

export type BestOptions = {
  readonly regarded: Regarded;
  /** More that the centre line may not cross; legs do not run along it. */
  readonly fences?: readonly Solid[];
  readonly mostPlaces: number;
  readonly shouldStop: () => boolean;
};

/**
 * The cheapest route of a request. Obstacles and areas are regarded as they are met: what is best with some of them and meets none of the
 * others is best with all.
 */
export function bestRoute(
  request: RouteRequest,
  { regarded, fences = [], mostPlaces, shouldStop }: BestOptions,
): BestRoute {
  const steps = turnSteps(request);
  for (;;) {
    const obstacles = request.obstacles.filter((o) => regarded.obstacles.has(o));
    const solids = obstacles.map((o) => solidOf(request, o));
    const areas = request.areas.filter((a) => regarded.areas.has(a));
    const found = legSearch({
      request: { ...request, areas },
      steps,
      solids: [...solids, ...fences],
      beside: [
        ...solids.map(({ shape, need }) => ({ shape, reach: need })),
        ...areas.map(({ shape }) => ({ shape, reach: 0 })),
      ],
      accept: (route) => obstaclesHit(request, route, obstacles).length === 0,
      mostPlaces,
      shouldStop,
    });
    if (found.is !== 'found') return found;
    const others = request.obstacles.filter((o) => !regarded.obstacles.has(o));
    const hit = obstaclesHit(request, found.route, others);
    const crossed = areasCrossed(request, found.route).flatMap(({ area }) =>
      regarded.areas.has(area) ? [] : [area],
    );
    if (hit.length === 0 && crossed.length === 0) return found;
    for (const obstacle of hit) regarded.obstacles.add(obstacle);
    for (const area of crossed) regarded.areas.add(area);
  }
}
