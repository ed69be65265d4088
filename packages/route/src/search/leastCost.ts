import type { Point } from '@footmark/geometry';
import type { RouteEnd } from '../request';
import { alongToEnd, mayArrive } from './arrival';
import type { Direction } from './direction';
import { distanceToEnd } from './grid';
import { acrossOf, alongOf } from './lines';
import type { TurnStep } from './turns';

/** What a route must at least still take: in cost, in length (m), and for bends, were nothing in its way. */
export type Left = { readonly cost: number; readonly length: number; readonly bends: number };

/** `distance`: as the crow flies to the nearest end (m). */
export type LeastCost = {
  readonly from: (from: Point, direction: Direction) => Left;
  readonly distance: (from: Point) => number;
};

/** A turn with which an end may be reached, as a triangle needs it. */
type LastTurn = { readonly sin: number; readonly cos: number; readonly cost: number; readonly saved: number };

type ByDirection = readonly {
  readonly end: RouteEnd;
  readonly straight: boolean;
  readonly turns: readonly LastTurn[];
}[];

/**
 * From a point in a direction to the nearest end: straight on; with one turn, the two sides of a triangle; else as the crow flies, with two
 * turns.
 */
export function leastCost(ends: readonly RouteEnd[], steps: readonly TurnStep[]): LeastCost {
  const least = Math.max(0, Math.min(...steps.map((s) => s.cost)));
  const saved = Math.max(0, ...steps.map((s) => s.saved));
  const known = new Map<number, ByDirection>();
  const arrivalsIn = (direction: Direction): ByDirection => {
    const before = known.get(direction.key);
    if (before !== undefined) return before;
    const found = ends.map((end) => ({
      end,
      straight: mayArrive(end, direction.heading),
      turns: steps.flatMap(({ turn, cost, saved: less, between }) =>
        between === null && mayArrive(end, direction.heading + turn)
          ? [{ sin: Math.sin(turn), cos: Math.cos(turn), cost, saved: less }]
          : [],
      ),
    }));
    known.set(direction.key, found);
    return found;
  };
  const distance = (p: Point) => {
    let nearest = Infinity;
    for (const end of ends) nearest = Math.min(nearest, distanceToEnd(end, p));
    return nearest;
  };
  const from = (from: Point, direction: Direction) => {
    let [bestCost, bestLength, bends] = [Infinity, Infinity, least];
    for (const { end, straight, turns } of arrivalsIn(direction)) {
      const along = straight ? alongToEnd(from, direction, end) : null;
      const isPiece = 'from' in end.at;
      if (along !== null && along >= 0) {
        bestCost = Math.min(bestCost, along);
        bestLength = Math.min(bestLength, along);
        bends = 0;
        // straight on a piece is met further off than where it is nearest
        if (!isPiece) continue;
      }
      const away = distanceToEnd(end, from);
      let cost = away + (isPiece ? 1 : 2) * least;
      if (!isPiece) {
        const ahead = alongOf(direction, end.at as Point) - alongOf(direction, from);
        const right = acrossOf(direction, end.at as Point) - acrossOf(direction, from);
        for (const turn of turns) {
          const second = right / turn.sin;
          const first = ahead - second * turn.cos;
          if (second >= 0 && first >= 0) cost = Math.min(cost, first + second + turn.cost);
        }
      }
      bestCost = Math.min(bestCost, cost);
      bestLength = Math.min(bestLength, Math.max(0, away - 2 * saved));
    }
    return { cost: bestCost, length: bestLength, bends };
  };
  return { from, distance };
}
