import { arcLength, type Point, tangentLength } from '@footmark/geometry';
import type { RouteBend } from '../foundRoute';
import type { Bend, RouteRequest } from '../request';

/** Over which turn (rad) two bends in a row are not looked at as one: a drain does not turn back. */
const MOST_OF_TWO_RAD = (2.05 * Math.PI) / 3;

/** Turns that differ by less than this (rad) are one. */
const SAME_TURN_RAD = 1e-9;

const SIDES = ['right', 'left'] as const;
type Side = (typeof SIDES)[number];
type Sided = readonly [Bend, Side];

/** A change of direction as the search makes it: one standard bend, or two as near to each other as they go. Turns are positive to the right. */
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

/**
 * All steps of a request, the single bends first. Two bends to one side that turn like one are left out, as the one is cheaper; to both sides they
 * step aside as well, but for two alike, which lead on in the same direction.
 */
export function turnSteps({
  bends,
  leastStraight,
}: Pick<RouteRequest, 'bends' | 'leastStraight'>): readonly TurnStep[] {
  const singles = bends.flatMap((bend) => [single(bend, 'right'), single(bend, 'left')]);
  const pairs = bends.flatMap((a) => bends.map((b) => [a, b] as const));
  const aside = pairs.filter(([a, b]) => a.turn !== b.turn);
  const on = pairs.filter(
    ([a, b]) =>
      a.turn + b.turn <= MOST_OF_TWO_RAD &&
      !bends.some(
        (one) => Math.abs(one.turn - a.turn - b.turn) < SAME_TURN_RAD && one.cost <= a.cost + b.cost,
      ),
  );
  return [
    ...singles,
    ...SIDES.flatMap((to) => [
      ...on.map(([a, b]) => two([a, to], [b, to], leastStraight)),
      ...aside.map(([a, b]) => two([a, to], [b, to === 'right' ? 'left' : 'right'], leastStraight)),
    ]),
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

function two([a, first]: Sided, [b, second]: Sided, leastStraight: number): TurnStep {
  const turnOf = (bend: Bend, to: Side) => (to === 'right' ? bend.turn : -bend.turn);
  return {
    bends: [
      { bend: a.id, to: first },
      { bend: b.id, to: second },
    ],
    turn: turnOf(a, first) + turnOf(b, second),
    cost: a.cost + b.cost - savedBy(a) - savedBy(b),
    saved: savedBy(a) + savedBy(b),
    layingBefore: a.laying,
    layingAfter: b.laying,
    between: { turn: turnOf(a, first), length: a.laying + leastStraight + b.laying },
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
