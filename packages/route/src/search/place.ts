import type { Point } from '@footmark/geometry';
import type { Route } from '../foundRoute';
import type { RouteEnd } from '../request';
import type { Direction } from './direction';
import { acrossStep, type TurnStep } from './turns';

/** Where a leg begins: the point in which it meets the one before, and what it took to come there. */
export type Place = {
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

/** Where a leg of a place ends: so far along it (m), and at which cost in all. */
type Reached = { readonly from: Place; readonly along: number; readonly cost: number };

/** The place after a turn into a direction. */
export function placeAfter({ from, along, cost }: Reached, step: TurnStep, direction: Direction): Place {
  const at = pointAfter(from, along, acrossStep(step, from.direction.heading));
  const length = lengthAfter(from, along, step);
  return { at, direction, cost, length, bends: from.bends + step.bends.length, from, step, end: null };
}

export function placeAtEnd({ from, along, cost }: Reached, end: RouteEnd): Place {
  const { direction, bends } = from;
  const at = pointAfter(from, along, { x: 0, y: 0 });
  return { at, direction, cost, length: from.length + along, bends, from, step: null, end };
}

/** `across`: over the step that follows. */
export function pointAfter({ at, direction }: Place, along: number, across: Point): Point {
  return {
    x: at.x + along * direction.ahead.x + across.x,
    y: at.y + along * direction.ahead.y + across.y,
  };
}

export function lengthAfter({ length }: Place, along: number, { between, saved }: TurnStep): number {
  return length + along + (between?.length ?? 0) - saved;
}

/** The first of the two points of a step that has two. */
export function firstOfStep({ at }: Place, step: TurnStep, from: Place): Point {
  const across = acrossStep(step, from.direction.heading);
  return { x: at.x - across.x, y: at.y - across.y };
}

export function routeOf(last: Place, end: RouteEnd): Route {
  const points: Point[] = [];
  const bends: Route['bends'][number][] = [];
  for (let place: Place | null = last; place !== null; place = place.from) {
    points.unshift(place.at);
    const { step, from } = place;
    if (step === null || from === null) continue;
    bends.unshift(...step.bends);
    if (step.between !== null) points.unshift(firstOfStep(place, step, from));
  }
  return { points, bends, end: end.id };
}
