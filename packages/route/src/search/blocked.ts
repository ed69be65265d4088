import type { Route } from '../foundRoute';
import type { Obstacle, RouteRequest } from '../request';
import { bestRoute, GOOD, type Regarded, regardedFor } from './bestRoute';
import type { Ground } from './ground';
import { type RatedRoute, rated } from './ratedRoute';
import { type Change, changed, shareGiven } from './relaxation';
import { solidOf } from './solid';

/** The smallest change of one requirement that opens a way, as far as was looked, and that way. */
export type Relaxation = { readonly change: Change; readonly route: RatedRoute };

/** Which requirements keep a route from being one. */
export type Blocked =
  /** No ground leads from the start to an end: these obstacles are around the start's. */
  | { readonly code: 'ground'; readonly obstacles: readonly string[] }
  /** Each of them alone: without it, or nearer to it, there is a route. */
  | { readonly code: 'obstacles'; readonly obstacles: readonly string[] }
  | { readonly code: 'fall' | 'headings' | 'bends' | 'straight' }
  /** None of them alone: these obstacles together with the others. */
  | { readonly code: 'together'; readonly obstacles: readonly string[] };

export type NoRoute = {
  readonly is: 'none';
  /** There may be one all the same: not everywhere was looked. */
  readonly gaveUp: boolean;
  readonly because: readonly Blocked[];
  /** The least change first. */
  readonly relaxations: readonly Relaxation[];
};

/** `regarded`: what the search that found none had to look at. */
export type Search = {
  readonly ground: Ground;
  readonly regarded: Pick<Regarded, 'obstacles' | 'areas'>;
  readonly gaveUp: boolean;
  readonly shouldStop: () => boolean;
};

/** So many obstacles are tried with less clearance, or without. */
const MOST_OBSTACLES = 5;
/** Looks no further than this many places for one way, and where many ways are tried. */
const MOST_PLACES = 4000;
const MOST_PLACES_SOON = 1500;
/** Clearances are given to so many parts of a metre, falls to so many parts of the run. */
const CLEARANCE_STEPS = 100;
const FALL_STEPS = 1e6;
/** So many more bends are worth a search. */
const MORE_BENDS = 4;

/** Why a request has no route, and what would open one. */
export function whyNone(request: RouteRequest, search: Search): NoRoute | { readonly is: 'stopped' } {
  const { ground, regarded, gaveUp } = search;
  const look = lookingFor(request, search);
  const relaxations =
    ground.is === 'apart'
      ? ground.barriers
          .slice(0, MOST_OBSTACLES)
          .flatMap(({ obstacle, clearance }) => nearerTo(request, obstacle, clearance, look))
      : [
          ...lessFall(request, look),
          ...moreBends(request, look),
          ...anyHeading(request, look),
          ...noStraight(request, look),
          ...suspects(request, regarded.obstacles)
            .slice(0, MOST_OBSTACLES)
            .flatMap((obstacle) => nearerTo(request, obstacle, obstacle.clearance, look)),
        ];
  if (search.shouldStop()) return { is: 'stopped' };
  const obstacles = (ground.is === 'apart' ? ground.about : suspects(request, regarded.obstacles)).map(
    (o) => o.id,
  );
  return {
    is: 'none',
    gaveUp: gaveUp && ground.is === 'joined',
    because: ground.is === 'apart' ? [{ code: 'ground', obstacles }] : becauseOf(relaxations, obstacles),
    relaxations: relaxations.toSorted(
      (a, b) => shareGiven(a.change) - shareGiven(b.change) || a.route.cost.total - b.route.cost.total,
    ),
  };
}

function becauseOf(relaxations: readonly Relaxation[], about: readonly string[]): readonly Blocked[] {
  const changes = relaxations.map((r) => r.change);
  const found: Blocked[] = [];
  const has = (is: Change['is']) => changes.some((c) => c.is === is);
  if (has('less-fall')) found.push({ code: 'fall' });
  if (has('any-heading')) found.push({ code: 'headings' });
  if (has('more-bends')) found.push({ code: 'bends' });
  if (has('no-straight')) found.push({ code: 'straight' });
  const obstacles = changes.flatMap((c) => ('obstacle' in c ? [c.obstacle] : []));
  if (obstacles.length > 0) found.push({ code: 'obstacles', obstacles });
  return found.length > 0 ? found : [{ code: 'together', obstacles: about }];
}

/** What was regarded, then what the start or an end is nearer to than it asks. */
function suspects(request: RouteRequest, regarded: ReadonlySet<Obstacle>): readonly Obstacle[] {
  const isNear = (o: Obstacle) => !regarded.has(o) && solidOf(request, o).ends.length > 0;
  return [...regarded, ...request.obstacles.filter(isNear)];
}

/** `soon`: any route will do; null when none is found. */
type Look = (request: RouteRequest, how?: { readonly soon: boolean }) => Route | null;

function lookingFor(request: RouteRequest, { regarded, shouldStop }: Search): Look {
  const ids = new Set([...regarded.obstacles].map((o) => o.id));
  return (asked, { soon } = { soon: false }) => {
    if (shouldStop()) return null;
    const obstacles = new Set(asked.obstacles.filter((o) => ids.has(o.id)));
    const areas = new Set(asked.areas === request.areas ? regarded.areas : []);
    const found = bestRoute(asked, {
      regarded: { ...regardedFor(asked), obstacles, areas },
      mostPlaces: soon ? MOST_PLACES_SOON : MOST_PLACES,
      better: soon ? [] : GOOD,
      shouldStop,
    });
    return found.is === 'found' ? found.route : null;
  };
}

function opened(request: RouteRequest, change: Change, route: Route): Relaxation {
  return { change, route: rated(changed(request, change), route) };
}

/** With less clearance to an obstacle, as much as leads to a route and `most` at the most; where none does, through the obstacle. */
function nearerTo(
  request: RouteRequest,
  { id, clearance }: Obstacle,
  most: number,
  look: Look,
): readonly Relaxation[] {
  const nearer = (steps: number): Change => ({
    is: 'less-clearance',
    obstacle: id,
    from: clearance,
    to: steps / CLEARANCE_STEPS,
  });
  const soonAt = (steps: number) => look(changed(request, nearer(steps)), { soon: true });
  let [open, blocked] = [
    0,
    Math.min(Math.floor(most * CLEARANCE_STEPS) + 1, Math.ceil(clearance * CLEARANCE_STEPS)),
  ];
  let route = blocked > 0 ? soonAt(open) : null;
  if (route === null) {
    const through: Change = { is: 'through', obstacle: id };
    const without = look(changed(request, through));
    return without === null ? [] : [opened(request, through, without)];
  }
  while (blocked - open > 1) {
    const middle = (open + blocked) >> 1;
    const found = soonAt(middle);
    if (found === null) blocked = middle;
    else [open, route] = [middle, found];
  }
  return [opened(request, nearer(open), look(changed(request, nearer(open))) ?? route)];
}

/** The fall that the shortest way has. */
function lessFall(request: RouteRequest, look: Look): readonly Relaxation[] {
  const { start, ends, grade, bends } = request;
  if (!grade.kept || grade.least <= 0 || start.invert === null) return [];
  const free = { ...request, grade: { ...grade, kept: false } };
  const short = { ...free, areas: [], bends: bends.map((b) => ({ ...b, cost: 0 })) };
  const route = look(short) ?? look(free);
  const invert = ends.find((e) => e.id === route?.end)?.invert ?? null;
  if (route === null || invert === null) return [];
  const has = (start.invert - invert) / rated(request, route).cost.length;
  if (has >= grade.least) return [];
  const to = Math.floor(has * FALL_STEPS) / FALL_STEPS;
  return [opened(request, { is: 'less-fall', from: grade.least, to }, route)];
}

function moreBends(request: RouteRequest, look: Look): readonly Relaxation[] {
  const from = request.mostBends;
  for (let to = from + 1; to <= from + MORE_BENDS; to++) {
    const change: Change = { is: 'more-bends', from, to };
    const route = look(changed(request, change));
    if (route !== null) return [opened(request, change, route)];
  }
  return [];
}

function anyHeading(request: RouteRequest, look: Look): readonly Relaxation[] {
  return request.ends.flatMap(({ id, headings }) => {
    const change: Change = { is: 'any-heading', end: id };
    const route = headings === null ? null : look(changed(request, change));
    return route === null ? [] : [opened(request, change, route)];
  });
}

function noStraight(request: RouteRequest, look: Look): readonly Relaxation[] {
  const change: Change = { is: 'no-straight', from: request.leastStraight };
  const route = request.leastStraight > 0 ? look(changed(request, change)) : null;
  return route === null ? [] : [opened(request, change, route)];
}
