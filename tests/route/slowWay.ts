import type { Point } from '@footmark/geometry';
import type { Headings, Route, RouteEnd, RouteRequest } from '@footmark/route';
import { type Ground, groundTo } from './ground';
import type { Ray } from './rays';
import { afterTurn, type SlowPlace, type SlowTurn } from './slowTurns';

export type SlowBest = { readonly cost: number; readonly developed: number; readonly route: Route };

/** Turns and, before each but the last, the straight of the centre line; of a way to a place of an end. */
export type SlowWay = {
  readonly end: RouteEnd;
  readonly at: Point;
  readonly turns: readonly SlowTurn[];
  readonly straights: readonly number[];
  readonly cost: number;
};

/** A way with these turns and straights, exactly; null where it is not free, or not laid. */
export function laidWay(
  request: RouteRequest,
  ground: Ground,
  { end, at, turns, straights }: Omit<SlowWay, 'cost'>,
): (SlowWay & { readonly developed: number; readonly last: number; readonly all: readonly number[] }) | null {
  let place = startOf(request);
  const all: number[] = [];
  let last: number | null = null;
  for (const [i, turn] of turns.entries()) {
    const before = turns[i - 1];
    const solution = i === turns.length - 1 ? lastTwo(place, turn, at) : null;
    const straight = straights[i] ?? solution?.first;
    if (straight === undefined || straight < leastStraight(request, before, turn) - 1e-9) return null;
    if (i === turns.length - 1) {
      if (solution === null || solution.last < turn.over) return null;
      last = solution.last;
    }
    const ray = rayOf(place);
    if (ground.freeRun(ray, straight) < straight) return null;
    const after = afterTurn(ground, goneAlong(place, straight, ground.areasAlong(ray)(straight)), turn);
    if (after === null) return null;
    all.push(straight);
    place = after;
  }
  last ??= away(place, at);
  const ray = rayOf(place);
  if (ground.freeRun(ray, last) < last || !mayArrive(end, place.heading)) return null;
  const developed = place.developed + last;
  if (developed > longestFor(request, end)) return null;
  const cost = place.cost + last + ground.areasAlong(ray)(last);
  return { end, at, turns, straights, cost, developed, last, all };
}

/** Straight on from the start, where an end lies there. */
export function straightWay(request: RouteRequest, end: RouteEnd): SlowWay | null {
  const { x, y, ux, uy } = rayOf(startOf(request));
  const [a, b] = 'x' in end.at ? [end.at, end.at] : [end.at.from, end.at.to];
  const [sideA, sideB] = [a, b].map((p) => (p.x - x) * uy - (p.y - y) * ux) as [number, number];
  const [alongA, alongB] = [a, b].map((p) => (p.x - x) * ux + (p.y - y) * uy) as [number, number];
  const touching = Math.abs(sideA) < 1e-9 && Math.abs(sideB) < 1e-9;
  if (!touching && sideA * sideB > 0) return null;
  const along = touching ? Math.min(alongA, alongB) : alongA + (sideA / (sideA - sideB)) * (alongB - alongA);
  if (along <= 0) return null;
  const at = { x: x + along * ux, y: y + along * uy };
  return laidWay(request, groundTo(request, at), { end, at, turns: [], straights: [] });
}

export function asRoute(request: RouteRequest, way: SlowWay): SlowBest {
  const laid = laidWay(request, groundTo(request, way.at), way);
  if (laid === null) throw new Error('a way that was found is no way');
  const points: Point[] = [request.start.at];
  let { x, y, heading } = startOf(request);
  for (const [i, turn] of way.turns.entries()) {
    const length = (way.turns[i - 1]?.tangent ?? 0) + (laid.all[i] ?? 0) + turn.tangent;
    x += length * Math.sin(heading);
    y += length * Math.cos(heading);
    points.push({ x, y });
    heading += turn.turn;
  }
  const bends = way.turns.map((t) => t.bend);
  return {
    cost: laid.cost,
    developed: laid.developed,
    route: { points: [...points, way.at], bends, end: way.end.id },
  };
}

/** The straights before and after a last turn that bring a route from a place to another; null where they would go back. */
export function lastTwo(from: SlowPlace, turn: SlowTurn, to: Point): { first: number; last: number } | null {
  const [sin, cos] = [Math.sin(from.heading), Math.cos(from.heading)];
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const ahead = dx * sin + dy * cos - turn.ahead;
  const right = dx * cos - dy * sin - turn.right;
  const last = right / Math.sin(turn.turn);
  const first = ahead - last * Math.cos(turn.turn);
  return first < 0 || last < 0 ? null : { first, last };
}

export function leastStraight(request: RouteRequest, before: SlowTurn | undefined, turn: SlowTurn): number {
  return before === undefined ? turn.over : before.over + request.leastStraight + turn.over;
}

export function mayArrive({ headings }: RouteEnd, heading: number): boolean {
  return headings === null || headings.some((among) => isAmong(among, heading));
}

function isAmong({ from, to }: Headings, heading: number): boolean {
  const half = (to - from - 2 * Math.PI * Math.floor((to - from) / (2 * Math.PI))) / 2;
  return Math.cos(heading - from - half) >= Math.cos(half + 1e-9) - 1e-15;
}

/** The developed length that the fall is enough for. */
export function longestFor({ grade, start }: RouteRequest, { invert }: RouteEnd): number {
  return grade.kept && start.invert !== null && invert !== null
    ? (start.invert - invert) / grade.least
    : Infinity;
}

export function startOf({ start }: RouteRequest): SlowPlace {
  return { x: start.at.x, y: start.at.y, heading: start.heading, developed: 0, cost: 0 };
}

export function goneAlong(from: SlowPlace, length: number, areas: number): SlowPlace {
  return {
    x: from.x + length * Math.sin(from.heading),
    y: from.y + length * Math.cos(from.heading),
    heading: from.heading,
    developed: from.developed + length,
    cost: from.cost + length + areas,
  };
}

export function rayOf({ x, y, heading }: SlowPlace): Ray {
  return { x, y, ux: Math.sin(heading), uy: Math.cos(heading) };
}

export function away(a: Point, b: Point): number {
  return Math.hypot(a.x - b.x, a.y - b.y);
}
