import { nearestOnSegment, type Point } from '@footmark/geometry';
import type { Shape } from '../request';
import type { Direction } from './direction';
import { runsOf } from './outlineRuns';
import { ON_LINE_M } from './tolerances';

/**
 * The lines in a direction that touch a shape grown by `reach` (m) and do not enter it there, each by how far to the right of the frame's
 * origin it lies. A shortest way between shapes has its legs on such lines, or on such through its start or end.
 */
export function tracksBeside(shape: Shape, reach: number, { right }: Direction): readonly number[] {
  const offset = (p: Point) => p.x * right.x + p.y * right.y;
  switch (shape.is) {
    case 'circle': {
      const at = offset(shape.centre);
      return [at - shape.radius - reach, at + shape.radius + reach];
    }
    case 'line':
      return besideCorners(shape, false, shape.halfWidth + reach, right);
    case 'ring':
      return besideCorners(shape, true, reach, right);
  }
}

/** Lines that touch one outline on one side and are nearer to each other than this (m) need not all be tried. */
const AS_ONE_M = 5e-3;

function besideCorners(
  { points }: { readonly points: readonly Point[] },
  closed: boolean,
  reach: number,
  right: Point,
): readonly number[] {
  const [rightOf, leftOf]: [number[], number[]] = [[], []];
  const offset = (p: Point) => p.x * right.x + p.y * right.y;
  // what touches the grown outline at one corner is within reach of no other part of it
  const touches = (corner: Point, to: number) =>
    reach === 0 ||
    !comesWithin(points, closed, reach - ON_LINE_M, {
      x: corner.x + to * right.x,
      y: corner.y + to * right.y,
    });
  for (const [i, corner] of points.entries()) {
    const at = offset(corner);
    const before = offset(points[i - 1] ?? (closed ? points.at(-1) : undefined) ?? corner);
    const after = offset(points[i + 1] ?? (closed ? points[0] : undefined) ?? corner);
    if (before <= at && after <= at && touches(corner, reach)) rightOf.push(at + reach);
    if (before >= at && after >= at && touches(corner, -reach)) leftOf.push(at - reach);
  }
  return [...outermost(rightOf, 1), ...outermost(leftOf, -1)];
}

/** Of those that are as good as one the furthest out; `side`: 1 to the right, -1 to the left. */
function outermost(offsets: readonly number[], side: 1 | -1): readonly number[] {
  const found: number[] = [];
  for (const at of offsets.toSorted((a, b) => side * (b - a)))
    if (side * ((found.at(-1) ?? side * Infinity) - at) > AS_ONE_M) found.push(at);
  return found;
}

/** Whether an outline comes nearer to a point than `reach` (m). */
function comesWithin(points: readonly Point[], closed: boolean, reach: number, p: Point): boolean {
  return runsOf(points).some(({ first, end, low, high }) => {
    if (p.x < low.x - reach || p.x > high.x + reach || p.y < low.y - reach || p.y > high.y + reach)
      return false;
    for (let i = first; i < end; i++) {
      const a = points[i];
      const b = points[i + 1] ?? (closed ? points[0] : a);
      if (a !== undefined && b !== undefined && nearestOnSegment(p, a, b).distance < reach) return true;
    }
    return false;
  });
}
