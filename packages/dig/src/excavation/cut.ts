import {
  add,
  COINCIDENT_M,
  distance,
  interpolate,
  type Point,
  type Region,
  scale,
  stripRegion,
  subtract,
  unionOf,
} from '@footmark/geometry';

/** A place of the middle line of a dig's bottom: its station on the pipe and the depth of the bottom below the ground, metres. */
export type CutPoint = { readonly at: Point; readonly station: number; readonly depth: number };

/** How sides and ends are cut: straight up for `upright` metres from the bottom, from there on back by `slope` (horizontal over vertical). */
export type CutSides = { readonly slope: number; readonly upright: number };

/**
 * A dig as a solid: a level cross-section `width` metres wide at the bottom, along a line whose depth changes evenly between points. Points
 * follow the flow; two at one station are a step.
 */
export type Cut = CutSides & { readonly points: readonly CutPoint[]; readonly width: number };

/** How far sides are cut back at `height` metres above the bottom. */
export function cutBack({ slope, upright }: CutSides, height: number): number {
  return slope * Math.max(0, height - upright);
}

/** How far beyond the bottom, where the dig is `depth` metres deep, an outline of it reaches. */
type Spread = (depth: number) => number;

/** The outline of the bottom grown to all sides. */
export function grownCut({ points, width }: Pick<Cut, 'points' | 'width'>, spread: Spread): Region {
  return widened(withEnds(points, spread), width, spread);
}

/** The outline at the ground of a piece of a dig that goes on beyond it, of which nothing is known there: to its sides alone. */
export function pieceOfTop(cut: Cut): Region {
  return widened(cut.points, cut.width, (depth) => cutBack(cut, depth));
}

function widened(points: readonly CutPoint[], width: number, spread: Spread): Region {
  return stripRegion(
    points.map(({ at, depth }) => {
      const half = width / 2 + spread(depth);
      return { at, left: half, right: half };
    }),
  );
}

/** The outline at a share of the depth: 0 at the bottom, 1 at the ground. */
export function cutLayer(cut: Cut, share: number): Region {
  return grownCut(cut, (depth) => cutBack(cut, depth * share));
}

/** Where a dig goes deeper than `level` metres below the ground: what it lays bare of things that lie so deep. */
export function outlineAt(cut: Cut, level: number): Region {
  const spread = (depth: number) => cutBack(cut, Math.max(0, depth - level));
  const pieces = deeperThan(cut.points, level);
  return unionOf(pieces.map((points) => grownCut({ points, width: cut.width }, spread)));
}

/** The pieces of a line that are deeper than a level, cut off where it meets that. */
export function deeperThan(points: readonly CutPoint[], level: number): readonly (readonly CutPoint[])[] {
  const pieces: CutPoint[][] = [[]];
  for (const point of withMeetings(points, level)) {
    if (point.depth < level) continue;
    pieces.at(-1)?.push(point);
    if (point.depth === level) pieces.push([point]);
  }
  return pieces.filter((piece) => piece.some(({ depth }) => depth > level) && piece.length > 1);
}

/** A line no deeper than a level. */
export function noDeeperThan(points: readonly CutPoint[], level: number): readonly CutPoint[] {
  return withMeetings(points, level).map((point) => ({ ...point, depth: Math.min(level, point.depth) }));
}

/** A line with a point wherever it passes a level. */
function withMeetings(points: readonly CutPoint[], level: number): readonly CutPoint[] {
  return points.flatMap((point, i) => {
    const next = points[i + 1];
    if (next === undefined || (point.depth - level) * (next.depth - level) >= 0) return [point];
    const t = (level - point.depth) / (next.depth - point.depth);
    const station = point.station + t * (next.station - point.station);
    return [point, { at: interpolate(point.at, next.at, t), station, depth: level }];
  });
}

/** The middle line at the ground, from end to end of the outline there. */
export function middleLine(cut: Cut): readonly Point[] {
  const line = withEnds(cut.points, (depth) => cutBack(cut, depth)).map(({ at }) => at);
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
