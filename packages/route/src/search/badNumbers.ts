import type { Point } from '@footmark/geometry';
import type { RouteEnd, RouteRequest, Shape } from '../request';
import type { RequestPart, RequestProblem } from './requestProblem';

/** Of each part of a request whether its numbers can be ones, and whether its shape has enough points. */
export function numberProblems(request: RouteRequest): readonly RequestProblem[] {
  const { start, ends, bends, obstacles, areas, grade } = request;
  const { diameter, leastStraight, freeEnds, mostBends } = request;
  const found: RequestProblem[] = [];
  const check = (part: RequestPart['part'], id: string | null, { any = [], notLess = [] }: Numbers) => {
    const isGood = any.every(Number.isFinite) && notLess.every((n) => Number.isFinite(n) && n >= 0);
    if (!isGood) found.push({ code: 'bad-number', values: { part, id } });
  };
  const checkShape = (part: RequestPart['part'], id: string, shape: Shape, notLess: number) => {
    check(part, id, { any: pointsOf(shape).flatMap(numbersOf), notLess: [notLess, sizeOf(shape)] });
    if (pointsOf(shape).length < LEAST_POINTS[shape.is])
      found.push({ code: 'too-few-points', values: { part, id } });
  };
  check('start', null, { any: [...numbersOf(start.at), start.heading, start.invert ?? 0] });
  for (const end of ends) check('end', end.id, { any: numbersOfEnd(end) });
  check('pipe', null, { notLess: [diameter, leastStraight, freeEnds, mostBends] });
  for (const { id, turn, radius, laying, cost } of bends)
    check('bend', id, { any: [turn], notLess: [radius, laying, cost] });
  check('grade', null, { notLess: [grade.least] });
  for (const { id, shape, clearance } of obstacles) checkShape('obstacle', id, shape, clearance);
  for (const { id, shape, perMetre } of areas) checkShape('area', id, shape, perMetre);
  return found;
}

/** `any`: finite; `notLess`: finite and not less than 0. */
type Numbers = { readonly any?: readonly number[]; readonly notLess?: readonly number[] };

const LEAST_POINTS = { circle: 1, ring: 3, line: 2 } as const;

function numbersOfEnd({ at, headings, invert }: RouteEnd): readonly number[] {
  const places = 'x' in at ? [at] : [at.from, at.to];
  return [
    ...places.flatMap(numbersOf),
    ...(headings ?? []).flatMap(({ from, to }) => [from, to]),
    invert ?? 0,
  ];
}

function pointsOf(shape: Shape): readonly Point[] {
  return shape.is === 'circle' ? [shape.centre] : shape.points;
}

function sizeOf(shape: Shape): number {
  return shape.is === 'circle' ? shape.radius : shape.is === 'line' ? shape.halfWidth : 0;
}

function numbersOf({ x, y }: Point): readonly [number, number] {
  return [x, y];
}
