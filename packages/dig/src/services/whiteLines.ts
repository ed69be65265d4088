import {
  distance,
  nearestOnSegment,
  type Point,
  regionArea,
  ringArea,
  ringPerimeter,
  unionOf,
} from '@footmark/geometry';
import { type Derived, type Site, type Ties, tieChooser } from '@footmark/site';
import type { DigOutline } from '../clearances/digOutline';

/** One piece of ground to be lined in white before the services are marked: what the digs in it take at the top, together. Metres, m². */
export type WhiteLine = {
  readonly digs: readonly string[];
  /** Its corners with what they are taped from (null: nothing is), anticlockwise. */
  readonly corners: readonly { readonly at: Point; readonly ties: Ties | null }[];
  /** Of the digs' tops, not of the line through the corners. */
  readonly area: number;
  readonly length: number;
};

/** A white line may lie this far (m) from the edge of a bend: no corner is taped that close to another for it. */
const LINE_SAGITTA_M = 0.1;

/** What to line in white. Digs that overlap are lined together. */
export function whiteLines(
  site: Site,
  derived: Derived,
  outlines: readonly DigOutline[],
): readonly WhiteLine[] {
  if (outlines.length === 0) return [];
  const ties = tieChooser(site, derived);
  return groupsOf(outlines).map(({ digs, ring, area }) => {
    const line = plainer(ring);
    return {
      digs,
      corners: line.map((at) => ({ at, ties: ties(at) })),
      area,
      length: ringPerimeter(line),
    };
  });
}

/** The pieces of the union of all, with the digs in each. Ground left standing inside one is not lined, nor counted. */
function groupsOf(outlines: readonly DigOutline[]) {
  const whole = unionOf(outlines.map(({ ring }) => [ring]));
  return whole
    .filter((ring) => ringArea(ring) > 0)
    .map((ring) => {
      const within = outlines.filter(
        (o) => regionArea(unionOf([[ring], [o.ring]])) - ringArea(ring) < SLIVER_M2,
      );
      return {
        ring,
        digs: [...new Set(within.map(({ id }) => id))],
        area: regionArea(unionOf(within.map((o) => [o.ring]))),
      };
    });
}

/** Areas (m²) that differ by less are the same: rounding. */
const SLIVER_M2 = 1e-6;

/** Without the corners of bends, from its two corners that lie furthest apart. */
function plainer(ring: readonly Point[]): readonly Point[] {
  const [first] = ring;
  if (first === undefined) return ring;
  const start = furthestFrom(first, ring);
  const turned = [...ring.slice(start), ...ring.slice(0, start)];
  const [origin = first] = turned;
  const half = furthestFrom(origin, turned);
  const there = kept(turned.slice(0, half + 1));
  const back = kept([...turned.slice(half), origin]);
  return [...there.slice(0, -1), ...back.slice(0, -1)];
}

function furthestFrom(p: Point, points: readonly Point[]): number {
  let [furthest, at] = [-1, 0];
  for (const [i, q] of points.entries()) if (distance(p, q) > furthest) [furthest, at] = [distance(p, q), i];
  return at;
}

/** The ends of a line and those points between that lie off the line through the rest (Douglas and Peucker). */
function kept(points: readonly Point[]): readonly Point[] {
  const [a, b] = [points[0], points.at(-1)];
  if (a === undefined || b === undefined || points.length < 3) return points;
  let [off, at] = [0, 0];
  for (const [i, p] of points.entries()) {
    const away = nearestOnSegment(p, a, b).distance;
    if (away > off) [off, at] = [away, i];
  }
  if (off <= LINE_SAGITTA_M) return [a, b];
  return [...kept(points.slice(0, at + 1)).slice(0, -1), ...kept(points.slice(at))];
}
