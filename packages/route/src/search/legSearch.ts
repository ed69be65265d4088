import type { Point } from '@footmark/geometry';
import FlatQueue from 'flatqueue';
import type { Route } from '../foundRoute';
import type { Area, RouteEnd, RouteRequest, Shape } from '../request';
import { alongToEnd, mayArrive, tracksToEnd } from './arrival';
import { type Direction, directionOf } from './direction';
import { leastCost } from './leastCost';
import { acrossOf, alongOf, Lines } from './lines';
import { rayInShape } from './rayInShape';
import { freeOf, type Solid } from './solid';
import { lengthUpTo, type Span } from './spans';
import { tracksBeside } from './tracks';
import { acrossStep, type TurnStep } from './turns';

/** What a search looks at. `beside`: what its legs may run along; `accept`: the last word on a whole route. */
export type LegSearch = {
  readonly request: RouteRequest;
  readonly steps: readonly TurnStep[];
  readonly solids: readonly Solid[];
  readonly beside: readonly { readonly shape: Shape; readonly reach: number }[];
  readonly accept: (route: Route) => boolean;
  /** Looks no further than this many places. */
  readonly mostPlaces: number;
  readonly shouldStop: () => boolean;
  /** Places that can only lead to dearer routes than one that is known are kept too: it may not be accepted. */
  readonly keepsAll?: boolean;
};

export type LegSearchResult =
  | { readonly is: 'found'; readonly route: Route; readonly cost: number }
  | { readonly is: 'none' | 'gave-up' | 'stopped' };

/** Where a leg begins: the point in which it meets the one before, and what it took to come there. */
type Place = {
  readonly at: Point;
  readonly direction: Direction;
  readonly cost: number;
  readonly length: number;
  readonly bends: number;
  readonly from: Place | null;
  readonly step: TurnStep | null;
  /** Of a whole route: the end at which `at` lies. */
  readonly end: RouteEnd | null;
};

type AreaSpans = { readonly area: Area; readonly spans: readonly Span[] };

/** How often (places) it is asked whether to stop. */
const ASK_EVERY = 64;
const ROUNDING_M = 1e-9;

/**
 * The cheapest route among those whose legs run beside things or through an end, or whose first leg is as short as its fittings allow: by
 * A* over the places where legs meet. Two bends in a row count as one step.
 */
export function legSearch(search: LegSearch): LegSearchResult {
  const { request, steps, accept, mostPlaces, shouldStop } = search;
  const queue = new FlatQueue<Place>();
  const tables = tablesOf(search);
  const lines = new Lines();
  const mostLength = lengthAllowed(request);
  const ahead = leastCost(request.ends, steps);
  let upper = Infinity;

  const push = (place: Place) => {
    const left = place.end === null ? ahead(place.at, place.direction) : { cost: 0, length: 0 };
    if (place.length + left.length > mostLength || place.cost + left.cost >= upper) return;
    if (place.end !== null && search.keepsAll !== true) upper = place.cost;
    queue.push(place, place.cost + left.cost);
  };

  push({
    at: request.start.at,
    direction: directionOf(request.start.heading),
    cost: 0,
    length: 0,
    bends: 0,
    from: null,
    step: null,
    end: null,
  });
  for (let looked = 0; ; looked++) {
    if (looked % ASK_EVERY === 0 && shouldStop()) return { is: 'stopped' };
    const place = queue.pop();
    if (place === undefined) return { is: 'none' };
    if (place.end !== null) {
      const route = routeOf(place, place.end);
      if (accept(route)) return { is: 'found', route, cost: place.cost };
      if (search.keepsAll !== true) return legSearch({ ...search, keepsAll: true });
      continue;
    }
    if (looked >= mostPlaces) return { is: 'gave-up' };
    if (!isStepClear(place, tables, search)) continue;
    const free = freeAhead(place, search);
    const areas = request.areas.map((area) => ({
      area,
      spans: rayInShape({ from: place.at, ahead: place.direction.ahead }, area.shape, 0),
    }));
    const along = alongOf(place.direction, place.at);
    const leg = { at: place.at, along, until: along + free, cost: place.cost, bends: place.bends };
    // what lies behind is looked at backwards along the same line
    if (!lines.isWorth(place.direction, leg, (from) => costBehind(areas, along - from))) continue;
    for (const reached of legsFrom(place, { free, areas, search, tables })) push(reached);
  }
}

type Tables = {
  readonly turned: (direction: Direction, turn: number) => Direction;
  readonly tracks: (direction: Direction) => readonly number[];
};

function tablesOf({ request, beside }: LegSearch): Tables {
  const directions = new Map<number, Direction>();
  const offsets = new Map<number, readonly number[]>();
  return {
    turned: (direction, turn) => {
      const made = directionOf(direction.heading + turn);
      const known = directions.get(made.key);
      if (known === undefined) directions.set(made.key, made);
      return known ?? made;
    },
    tracks: (direction) => {
      const known = offsets.get(direction.key);
      if (known !== undefined) return known;
      const found = [
        ...beside.flatMap(({ shape, reach }) => tracksBeside(shape, reach, direction)),
        ...request.ends.flatMap((end) =>
          mayArrive(end, direction.heading) ? tracksToEnd(end, direction) : [],
        ),
      ];
      const once = [...new Set(found.map((at) => Math.round(at / ROUNDING_M) * ROUNDING_M))];
      offsets.set(direction.key, once);
      return once;
    },
  };
}

function freeAhead({ at, direction }: Place, { solids, request }: LegSearch): number {
  const ray = { from: at, ahead: direction.ahead };
  let free = Infinity;
  for (const solid of solids) {
    free = Math.min(free, freeOf(ray, solid, request.freeEnds));
    if (free === 0) return 0;
  }
  return free;
}

function* legsFrom(
  place: Place,
  {
    free,
    areas,
    search: { request, steps },
    tables,
  }: {
    readonly free: number;
    readonly areas: readonly AreaSpans[];
    readonly search: LegSearch;
    readonly tables: Tables;
  },
): Generator<Place> {
  const { at, direction } = place;
  const used = place.step?.layingAfter ?? 0;
  for (const end of request.ends) {
    const t = mayArrive(end, direction.heading) ? alongToEnd(at, direction, end) : null;
    if (t === null || t < used - ROUNDING_M || t > free + ROUNDING_M) continue;
    const cost = place.cost + t + costUpTo(areas, t);
    yield {
      at: ahead(at, direction, t),
      direction,
      cost,
      length: place.length + t,
      bends: place.bends,
      from: place,
      step: null,
      end,
    };
  }
  const straight = place.step === null ? 0 : request.leastStraight;
  for (const step of steps) {
    if (place.bends + step.bends.length > request.mostBends) continue;
    const least = used + straight + step.layingBefore;
    if (least > free) continue;
    const after = tables.turned(direction, step.turn);
    const across = acrossStep(step, direction.heading);
    for (const t of legLengths(place, { least, after, across, tracks: tables.tracks(after) })) {
      if (t > free) continue;
      const meets = ahead(at, direction, t);
      const between = step.between?.length ?? 0;
      yield {
        at: { x: meets.x + across.x, y: meets.y + across.y },
        direction: after,
        cost: place.cost + t + costUpTo(areas, t) + between + step.cost,
        length: place.length + t + between - step.saved,
        bends: place.bends + step.bends.length,
        from: place,
        step,
        end: null,
      };
    }
  }
}

/** How long a leg may be: so that the next one runs on a track; the first one also as short as it can be. */
function* legLengths(
  { at, direction, step }: Place,
  {
    least,
    after,
    across,
    tracks,
  }: {
    readonly least: number;
    readonly after: Direction;
    readonly across: Point;
    readonly tracks: readonly number[];
  },
): Generator<number> {
  if (step === null) yield least;
  const rate = direction.ahead.x * after.right.x + direction.ahead.y * after.right.y;
  if (Math.abs(rate) < 1e-6) return; // parallel: no length changes the track
  const beside = acrossOf(after, at) + acrossOf(after, across);
  for (const track of tracks) {
    const t = (track - beside) / rate;
    if (t >= least) yield t;
  }
}

/** Whether the short leg between the two bends of a step is free. */
function isStepClear({ at, from, step }: Place, { turned }: Tables, { solids, request }: LegSearch): boolean {
  if (from === null || step === null || step.between === null) return true;
  const { turn, length } = step.between;
  const across = acrossStep(step, from.direction.heading);
  const ray = {
    from: { x: at.x - across.x, y: at.y - across.y },
    ahead: turned(from.direction, turn).ahead,
  };
  return solids.every((solid) => freeOf(ray, solid, request.freeEnds) >= length);
}

function ahead(from: Point, { ahead }: Direction, t: number): Point {
  return { x: from.x + t * ahead.x, y: from.y + t * ahead.y };
}

function costUpTo(areas: readonly AreaSpans[], t: number): number {
  let cost = 0;
  for (const { area, spans } of areas) if (spans.length > 0) cost += area.perMetre * lengthUpTo(spans, t);
  return cost;
}

/** The same for the way to here over the last `length` metres of the line. */
function costBehind(areas: readonly AreaSpans[], length: number): number {
  let cost = 0;
  for (const { area, spans } of areas) {
    if (spans.length > 0)
      cost +=
        area.perMetre *
        lengthUpTo(
          spans.map(([a, b]): Span => [-b, -a]),
          length,
        );
  }
  return cost;
}

/** The longest that a route may be for the fall that there is; Infinity when that is not known or not kept. */
function lengthAllowed({ start, ends, grade }: RouteRequest): number {
  if (!grade.kept || grade.least <= 0 || start.invert === null) return Infinity;
  const from = start.invert;
  const falls = ends.map(({ invert }) => (invert === null ? Infinity : from - invert));
  return Math.max(...falls) / grade.least;
}

function routeOf(last: Place, end: RouteEnd): Route {
  const points: Point[] = [];
  const bends: Route['bends'][number][] = [];
  for (let place: Place | null = last; place !== null; place = place.from) {
    points.unshift(place.at);
    const { step, from } = place;
    if (step === null || from === null) continue;
    bends.unshift(...step.bends);
    if (step.between !== null) {
      const across = acrossStep(step, from.direction.heading);
      points.unshift({ x: place.at.x - across.x, y: place.at.y - across.y });
    }
  }
  return { points, bends, end: end.id };
}
