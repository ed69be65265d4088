import {
  add,
  COINCIDENT_M,
  distance,
  type Point,
  type Region,
  scale,
  stripRegion,
  subtract,
} from '@footmark/geometry';

/** A place of the middle line of a dig's bottom: its station on the pipe and the depth of the bottom below the ground, metres. */
export type CutPoint = { readonly at: Point; readonly station: number; readonly depth: number };

/**
 * A dig as a solid: a level cross-section `width` metres wide at the bottom, along a line whose depth changes evenly between points, with
 * sides and ends cut back by `slope` (horizontal over vertical). Points follow the flow; two at one station are a step.
 */
export type Cut = { readonly points: readonly CutPoint[]; readonly width: number; readonly slope: number };

/** How far beyond the bottom, where the dig is `depth` metres deep, an outline of it reaches. */
type Spread = (depth: number) => number;

/** The outline of the bottom grown to all sides. */
export function grownCut({ points, width }: Pick<Cut, 'points' | 'width'>, spread: Spread): Region {
  return stripRegion(
    withEnds(points, spread).map(({ at, depth }) => {
      const half = width / 2 + spread(depth);
      return { at, left: half, right: half };
    }),
  );
}

/** The outline at a share of the depth: 0 at the bottom, 1 at the ground. */
export function cutLayer(cut: Cut, share: number): Region {
  return grownCut(cut, (depth) => cut.slope * depth * share);
}

/** The middle line at the ground, from end to end of the outline there. */
export function middleLine({ points, slope }: Cut): readonly Point[] {
  const line = withEnds(points, (depth) => slope * depth).map(({ at }) => at);
  return line.filter((at, i) => distance(at, line[i - 1] ?? { x: Infinity, y: Infinity }) > COINCIDENT_M);
}

/** The bottom's outline, which needs no depth. */
export function bottomOutline(line: readonly { readonly at: Point }[], width: number): Region {
  return stripRegion(line.map(({ at }) => ({ at, left: width / 2, right: width / 2 })));
}

/** Length of the middle line of the bottom (m). */
export function cutLength(points: readonly { readonly at: Point }[]): number {
  return points.reduce((sum, { at }, i) => sum + distance(at, points[i + 1]?.at ?? at), 0);
}

function withEnds(points: readonly CutPoint[], spread: Spread): readonly CutPoint[] {
  return [...beyondFirst(points, spread), ...points, ...beyondFirst(points.toReversed(), spread)];
}

function beyondFirst(points: readonly CutPoint[], spread: Spread): readonly CutPoint[] {
  const [end] = points;
  const inner = points.find((p) => end !== undefined && distance(p.at, end.at) > COINCIDENT_M);
  const out = end === undefined ? 0 : spread(end.depth);
  if (end === undefined || inner === undefined || out <= COINCIDENT_M) return [];
  const toward = scale(subtract(end.at, inner.at), out / distance(end.at, inner.at));
  return [{ ...end, at: add(end.at, toward) }];
}
