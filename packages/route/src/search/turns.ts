import { arcLength, type Point, tangentLength } from '@footmark/geometry';
import type { RouteBend } from '../foundRoute';
import type { Bend, RouteRequest } from '../request';

/** Over which turn (rad) two bends in a row are not looked at as one: a drain does not turn back. */
const MOST_OF_TWO_RAD = (2.05 * Math.PI) / 3;

/**
 * A change of direction as the search makes it: one standard bend, or two to the same side as near to each other as they go. Turns are positive
 * to the right.
 */
export type TurnStep = {
  readonly bends: readonly RouteBend[];
  readonly turn: number;
  /** What the bends cost, less what their arcs are shorter than their tangents (m). */
  readonly cost: number;
  readonly saved: number;
  /** From where the first legs meet to the end of the fitting, before it and after the last. */
  readonly layingBefore: number;
  readonly layingAfter: number;
  /** Of two bends: the heading between them, from the one before, and how far the second is from the first (m). */
  readonly between: { readonly turn: number; readonly length: number } | null;
};

/** All steps of a request, the single bends first. Two bends that turn like one are left out: the one is cheaper. */
export function turnSteps({
  bends,
  leastStraight,
}: Pick<RouteRequest, 'bends' | 'leastStraight'>): readonly TurnStep[] {
  const singles = bends.flatMap((bend) => [single(bend, 'right'), single(bend, 'left')]);
  const pairs = bends.flatMap((a) =>
    bends.flatMap((b) =>
      a.turn + b.turn > MOST_OF_TWO_RAD
        ? []
        : [two(a, b, leastStraight, 'right'), two(a, b, leastStraight, 'left')],
    ),
  );
  return [
    ...singles,
    ...pairs.filter(
      (pair) => !singles.some((one) => Math.abs(one.turn - pair.turn) < 1e-9 && one.cost <= pair.cost),
    ),
  ];
}

function single(bend: Bend, to: 'right' | 'left'): TurnStep {
  const saved = savedBy(bend);
  return {
    bends: [{ bend: bend.id, to }],
    turn: to === 'right' ? bend.turn : -bend.turn,
    cost: bend.cost - saved,
    saved,
    layingBefore: bend.laying,
    layingAfter: bend.laying,
    between: null,
  };
}

function two(a: Bend, b: Bend, leastStraight: number, to: 'right' | 'left'): TurnStep {
  const sign = to === 'right' ? 1 : -1;
  const length = a.laying + leastStraight + b.laying;
  return {
    bends: [
      { bend: a.id, to },
      { bend: b.id, to },
    ],
    turn: sign * (a.turn + b.turn),
    cost: a.cost + b.cost - savedBy(a) - savedBy(b),
    saved: savedBy(a) + savedBy(b),
    layingBefore: a.laying,
    layingAfter: b.laying,
    between: { turn: sign * a.turn, length },
  };
}

/** What an arc is shorter than its two tangents (m). */
function savedBy({ radius, turn }: Bend): number {
  return 2 * tangentLength(radius, turn) - arcLength(radius, turn);
}

/** From the first point of a step to its last, when the leg before runs ahead. */
export function acrossStep({ between }: TurnStep, heading: number): Point {
  if (between === null) return { x: 0, y: 0 };
  const turned = heading + between.turn;
  return { x: between.length * Math.sin(turned), y: between.length * Math.cos(turned) };
}
