import type { RouteRequest, Shape } from '../request';
import { before, mayArrive, tracksToEnd } from './arrival';
import { type Direction, directionOf } from './direction';
import { SAME_LENGTH_M } from './tolerances';
import { tracksBeside } from './tracks';
import type { TurnStep } from './turns';

/** What is the same for all legs in a direction, computed once. */
export type Tables = {
  readonly turned: (direction: Direction, turn: number) => Direction;
  /** Where legs in a direction may run, from left to right: see `tracksBeside`. */
  readonly tracks: (direction: Direction) => readonly number[];
};

export function tablesOf(
  { ends }: Pick<RouteRequest, 'ends'>,
  steps: readonly TurnStep[],
  beside: readonly { readonly shape: Shape; readonly reach: number }[],
): Tables {
  const directions = new Map<number, Direction>();
  const turns = new Map<Direction, Map<number, Direction>>();
  const offsets = new Map<number, readonly number[]>();
  const lastBends = steps.filter((step) => step.between === null);
  const oneOf = (made: Direction): Direction => {
    const known = directions.get(made.key);
    if (known === undefined) directions.set(made.key, made);
    return known ?? made;
  };
  return {
    turned: (direction, turn) => {
      const from = turns.get(direction) ?? new Map<number, Direction>();
      const known = from.get(turn);
      if (known !== undefined) return known;
      const made = oneOf(directionOf(direction.heading + turn));
      turns.set(direction, from.set(turn, made));
      return made;
    },
    tracks: (direction) => {
      const known = offsets.get(direction.key);
      if (known !== undefined) return known;
      const found = [
        ...beside.flatMap(({ shape, reach }) => tracksBeside(shape, reach, direction)),
        ...ends.flatMap((end) => (mayArrive(end, direction.heading) ? tracksToEnd(end, direction) : [])),
        // to a last leg that is as short as it can be
        ...ends.flatMap((end) =>
          lastBends.flatMap(({ turn, layingAfter }) => {
            const last = directionOf(direction.heading + turn);
            return mayArrive(end, last.heading) ? tracksToEnd(before(end, last, layingAfter), direction) : [];
          }),
        ),
      ];
      const once = [...new Set(found.map((at) => Math.round(at / SAME_LENGTH_M) * SAME_LENGTH_M))].sort(
        (a, b) => a - b,
      );
      offsets.set(direction.key, once);
      return once;
    },
  };
}
