import { chordCount } from './arc';
import { distance, type Point } from './point';
import { ringArea } from './ring';
import { NEGLIGIBLE_LENGTH_M } from './tolerances';

/** A known point and the metres of cable from it to the feature, which so lies in the disc of that radius. */
export type KnownPoint = Readonly<{ at: Point; cable: number }>;

/**
 * A stretch of a disc's rim: `known` the index of its known point, `at` and `radius` the disc's, `start` the direction from `at` to
 * where it begins, radians counter-clockwise from +x in [0, 2π), `span` the radians that it runs on counter-clockwise, up to 2π.
 */
export type ReachArc = Readonly<{ known: number; at: Point; radius: number; start: number; span: number }>;

const TURN = 2 * Math.PI;

/**
 * The outline of what the discs have in common, counter-clockwise, each arc beginning where the one before ends; a disc can bound
 * with several arcs, and one that lies about another one bounds nothing. One arc of 2π: that disc lies in all others. Empty when
 * nothing, or no more than a point, is common. Arcs up to `NEGLIGIBLE_LENGTH_M` are left out.
 */
export function commonArcs(knowns: readonly KnownPoint[]): readonly ReachArc[] {
  const discs = withoutRedundant(knowns);
  const arcs = discs.flatMap((disc) => arcsWithin(disc, discs));
  if (discs.length === 1) return arcs;
  const drawn = arcs.filter(({ radius, span }) => radius * span > NEGLIGIBLE_LENGTH_M);
  const [only] = drawn;
  // alone, an arc closes only round its disc: else it is what is left of an outline about as small as itself
  if (only !== undefined && drawn.length === 1 && only.span < Math.PI) return [];
  // along a convex outline the outward normal only turns one way, and on a disc it points from the centre
  return drawn.toSorted((p, q) => p.start - q.start);
}

/** Where the arc begins. */
export function beginOfArc({ at, radius, start }: ReachArc): Point {
  return { x: at.x + radius * Math.cos(start), y: at.y + radius * Math.sin(start) };
}

/** Area inside a closed chain of such arcs, square metres: the polygon of their ends and the segments R²·(Δ − sin Δ)/2 on it. */
export function areaInArcs(arcs: readonly ReachArc[]): number {
  let area = ringArea(arcs.map(beginOfArc));
  for (const { radius, span } of arcs) area += (radius ** 2 * excessOf(span)) / 2;
  return area;
}

/** The chain as a ring of points on it, no chord further than `maxSagitta` metres from its arc while `MOST_CHORDS` are enough. */
export function ringOfArcs(arcs: readonly ReachArc[], maxSagitta: number): readonly Point[] {
  return arcs.flatMap((arc) => {
    const { radius, start, span } = arc;
    if (radius <= NEGLIGIBLE_LENGTH_M) return [arc.at];
    const least = arcs.length === 1 ? 3 : 1;
    const chords = Math.max(least, chordCount(radius, radius * span, maxSagitta));
    return Array.from({ length: chords }, (_, i) =>
      beginOfArc({ ...arc, start: start + (span * i) / chords }),
    );
  });
}

type Disc = Omit<ReachArc, 'start' | 'span'>;

/** Without the discs that hold another one whole; of like discs the first stays. */
function withoutRedundant(knowns: readonly KnownPoint[]): readonly Disc[] {
  const smallestFirst = knowns
    .map(({ at, cable }, known): Disc => ({ known, at, radius: cable }))
    .toSorted((p, q) => p.radius - q.radius);
  const kept: Disc[] = [];
  for (const disc of smallestFirst) {
    const holds = (inner: Disc) =>
      distance(disc.at, inner.at) + inner.radius <= disc.radius + NEGLIGIBLE_LENGTH_M;
    if (!kept.some(holds)) kept.push(disc);
  }
  return kept;
}

/** The stretches of the disc's rim that lie in all other discs. */
function arcsWithin(disc: Disc, discs: readonly Disc[]): readonly ReachArc[] {
  const cuts = discs.filter((other) => other !== disc).map((other) => cutOf(disc, other));
  if (cuts.length === 0) return [{ ...disc, start: 0, span: TURN }];
  cuts.sort((p, q) => p.from - q.from);
  const arcs: ReachArc[] = [];
  // cut away up to here: at first by what the last cuts take beyond a full turn
  let cutTo = Math.max(...cuts.map(({ to }) => to)) - TURN;
  for (const { from, to } of cuts) {
    if (from > cutTo) arcs.push({ ...disc, start: inTurn(cutTo), span: from - cutTo });
    cutTo = Math.max(cutTo, to);
  }
  return arcs;
}

/** The directions, `from` in [0, 2π), in which the disc's rim lies outside the other disc. */
function cutOf({ at, radius }: Disc, other: Disc): { from: number; to: number } {
  const towards = Math.atan2(other.at.y - at.y, other.at.x - at.x);
  const half = halfAngleWithin(radius, other.radius, distance(at, other.at));
  const from = inTurn(towards + half);
  return { from, to: from + TURN - 2 * half };
}

/**
 * Half the angle under which a disc's centre sees the part of its rim inside another disc, 0 for none of it to π for all: the angle of
 * the triangle of both radii and the distance of the centres, from its half's tangent, which stays exact for flat triangles.
 */
function halfAngleWithin(radius: number, other: number, apart: number): number {
  const beside = Math.max(0, apart + other - radius) * Math.max(0, radius + other - apart);
  const opposite = (radius + other + apart) * Math.max(0, radius + apart - other);
  return 2 * Math.atan2(Math.sqrt(beside), Math.sqrt(opposite));
}

/** Δ − sin Δ, which cancels for small angles: below 0.1 rad its series, exact to 2e-11 of itself. */
function excessOf(span: number): number {
  const square = span * span;
  return span < 0.1 ? (span * square * (1 - (square / 20) * (1 - square / 42))) / 6 : span - Math.sin(span);
}

function inTurn(angle: number): number {
  return ((angle % TURN) + TURN) % TURN;
}
