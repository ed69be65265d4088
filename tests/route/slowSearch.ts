import type { Point } from '@footmark/geometry';
import type { RouteEnd, RouteRequest } from '@footmark/route';
import { type Ground, groundTo } from './ground';
import { refined } from './refine';
import { afterTurn, type SlowPlace, type SlowTurn, slowTurns } from './slowTurns';
import {
  asRoute,
  away,
  goneAlong,
  lastTwo,
  leastStraight,
  longestFor,
  mayArrive,
  rayOf,
  type SlowBest,
  type SlowWay,
  startOf,
  straightWay,
} from './slowWay';

// Tries every sequence of bends with every length of the straights between them on a grid; only the last two are solved for, so that the
// end is met. What is left out could not have been cheaper: from wherever a route has come to, the end is at least as far as the crow flies.

export type SlowOptions = {
  readonly mostBends: number;
  /** Of the grid of straights, and of places along an end (m). */
  readonly step: number;
};

/** How much dearer than as the crow flies a route may be (m): no more than is needed for one to be found. */
const SLACKS = [1, 2, 4, 8, 16];

/** The cheapest route; null where a grid four times as coarse finds none. */
export function slowSearch(request: RouteRequest, { mostBends, step }: SlowOptions): SlowBest | null {
  const most = Math.min(mostBends, request.mostBends);
  const least = Math.min(
    ...request.ends.flatMap((end) => placesOn(end, step)).map((p) => away(request.start.at, p)),
  );
  let best: SlowWay | null = null;
  const look = (grid: number, known: number) => {
    for (const way of gridWays(request, { mostBends: most, step: grid, known })) {
      const better = refined(request, way, grid / 2);
      if (better.cost < (best?.cost ?? Infinity)) best = better;
    }
    return best;
  };
  for (const slack of SLACKS) {
    const coarse = look(4 * step, least + slack);
    if (coarse === null) continue;
    const fine = look(step, coarse.cost);
    return fine === null ? null : asRoute(request, fine);
  }
  return null;
}

type GridOptions = SlowOptions & { readonly known: number };

/** The best way of each sequence of turns that is not dearer than the best of all, or as is known, by more than half a step. */
function gridWays(request: RouteRequest, { mostBends, step, known }: GridOptions): readonly SlowWay[] {
  const turns = slowTurns(request);
  const ways = new Map<string, SlowWay>();
  const margin = step / 2;
  let best = known;
  const targets = request.ends
    .flatMap((end) => placesOn(end, step).map((at) => ({ end, at, ground: groundTo(request, at) })))
    .map((target) => ({ ...target, away: away(request.start.at, target.at) }))
    .sort((a, b) => a.away - b.away);
  for (let bends = 0; bends <= mostBends; bends++) {
    if (bends === 0) {
      for (const end of request.ends) {
        const way = straightWay(request, end);
        if (way === null) continue;
        ways.set(end.id, way);
        best = Math.min(best, way.cost);
      }
      continue;
    }
    for (const target of targets) {
      if (target.away + bends * cheapest(turns) >= best + margin) continue;
      descend({
        request,
        turns,
        ...target,
        step,
        bends,
        limit: () => best + margin,
        found: (way) => {
          const key = `${way.end.id} ${way.turns.map((t) => turns.indexOf(t)).join(' ')}`;
          if (way.cost < (ways.get(key)?.cost ?? Infinity)) ways.set(key, way);
          best = Math.min(best, way.cost);
        },
      });
    }
  }
  return [...ways.values()].filter((way) => way.cost <= best + margin).sort((a, b) => a.cost - b.cost);
}

type Descent = {
  readonly request: RouteRequest;
  readonly turns: readonly SlowTurn[];
  readonly end: RouteEnd;
  readonly at: Point;
  readonly ground: Ground;
  readonly step: number;
  readonly bends: number;
  /** What a way may cost at the most. */
  readonly limit: () => number;
  readonly found: (way: SlowWay) => void;
};

/** All ways of so many bends to one place. */
function descend({ request, turns, end, at, ground, step, bends, limit, found }: Descent): void {
  const least = cheapest(turns);
  const longest = longestFor(request, end);
  const chosen: SlowTurn[] = [];
  const straights: number[] = [];
  const mayEnd = (heading: number) => turns.some((turn) => mayArrive(end, heading + turn.turn));

  const goOn = (from: SlowPlace, left: number) => {
    const ray = rayOf(from);
    const before = chosen.at(-1);
    const run = ground.freeRun(ray, limit() - from.cost - left * least);
    const areas = ground.areasAlong(ray);
    for (const turn of turns) {
      if (left === 2 && !mayEnd(from.heading + turn.turn)) continue;
      for (let along = leastStraight(request, before, turn); along <= run; along += step) {
        const toEnd = Math.hypot(from.x + along * ray.ux - at.x, from.y + along * ray.uy - at.y);
        // neither grows smaller further on
        if (from.cost + along + toEnd + left * least >= limit()) break;
        if (from.developed + along + toEnd > longest) break;
        const corner = goneAlong(from, along, areas(along));
        const after = afterTurn(ground, corner, turn);
        if (after === null || after.cost + away(after, at) + (left - 1) * least >= limit()) continue;
        chosen.push(turn);
        straights.push(along);
        if (left === 2) finish(after, turn);
        else goOn(after, left - 1);
        chosen.pop();
        straights.pop();
      }
    }
  };

  const finish = (from: SlowPlace, before?: SlowTurn) => {
    const ray = rayOf(from);
    let run: number | null = null;
    for (const turn of turns) {
      const two = lastTwo(from, turn, at);
      if (two === null || two.last < turn.over || two.first < leastStraight(request, before, turn)) continue;
      const length = two.first + turn.radius * Math.abs(turn.turn) + two.last;
      if (from.cost + length + turn.cost >= limit() || from.developed + length > longest) continue;
      if (!mayArrive(end, from.heading + turn.turn)) continue;
      run ??= ground.freeRun(ray, limit() - from.cost);
      if (two.first > run) continue;
      const after = afterTurn(ground, goneAlong(from, two.first, ground.areasAlong(ray)(two.first)), turn);
      if (after === null || after.cost + two.last >= limit()) continue;
      const last = rayOf(after);
      if (ground.freeRun(last, two.last) < two.last) continue;
      const cost = after.cost + two.last + ground.areasAlong(last)(two.last);
      if (cost < limit()) found({ end, at, turns: [...chosen, turn], straights: [...straights], cost });
    }
  };

  if (bends === 1) finish(startOf(request));
  else goOn(startOf(request), bends);
}

function placesOn({ at }: RouteEnd, step: number): readonly Point[] {
  if ('x' in at) return [at];
  const { from, to } = at;
  const steps = Math.ceil(away(from, to) / step);
  return Array.from({ length: steps + 1 }, (_, i) => ({
    x: from.x + (i / steps) * (to.x - from.x),
    y: from.y + (i / steps) * (to.y - from.y),
  }));
}

function cheapest(turns: readonly SlowTurn[]): number {
  return Math.min(...turns.map((t) => t.cost));
}
