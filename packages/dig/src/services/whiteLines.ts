import {
  differenceOf,
  distance,
  intersectionOf,
  nearestOnSegment,
  type Point,
  type Region,
  regionArea,
  ringArea,
  ringPerimeter,
  unionOf,
} from '@footmark/geometry';
import { type Derived, type Site, type Ties, tieChooser } from '@footmark/site';
import type { DigOutline } from '../clearances/digOutline';
import { regionOf, surroundingsOf } from '../excavation/surroundings';

/**
 * One piece of ground to be lined in white before the services are marked: what the digs in it take at the top, together, as far as it lies
 * open: nobody paints under a building. Metres, m².
 */
export type WhiteLine = {
  readonly digs: readonly string[];
  /** Its corners with what they are taped from (null: nothing is), anticlockwise. */
  readonly corners: readonly { readonly at: Point; readonly ties: Ties | null }[];
  /** Of the digs' tops, not of the line through the corners. */
  readonly area: number;
  readonly length: number;
  /** Of its digs, those whose depth is not known, so that they may take more. */
  readonly atLeast: readonly string[];
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
  const built = surroundingsOf(derived).buildings.map(regionOf);
  const open = outlines.map((outline) => ({ outline, ground: differenceOf([outline.ring], built) }));
  return groupsOf(open).map(({ digs, atLeast, ring, area }) => {
    const line = plainer(ring);
    return {
      digs,
      atLeast,
      corners: line.map((at) => ({ at, ties: ties(at) })),
      area,
      length: ringPerimeter(line),
    };
  });
}

type Open = { readonly outline: DigOutline; readonly ground: Region };

/** The pieces of the union of all, with the digs in each. Ground left standing inside one is not lined, nor counted. */
function groupsOf(open: readonly Open[]) {
  const whole = unionOf(open.map(({ ground }) => ground));
  return whole
    .filter((ring) => ringArea(ring) > SLIVER_M2)
    .map((ring) => {
      const here = open.map(({ outline, ground }) => ({ outline, ground: intersectionOf(ground, [ring]) }));
      const within = here.filter(({ ground }) => regionArea(ground) > SLIVER_M2);
      return {
        ring,
        digs: idsOf(within),
        atLeast: idsOf(within.filter(({ outline }) => outline.depth === null)),
        area: regionArea(unionOf(within.map(({ ground }) => ground))),
      };
    });
}

function idsOf(open: readonly Open[]): readonly string[] {
  return [...new Set(open.map(({ outline }) => outline.id))];
}

/** Areas (m²) of less are rounding. */
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
