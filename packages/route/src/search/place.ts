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
