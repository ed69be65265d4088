import { add, distance, type Point, scale } from './point';
import { beginOfArc, commonArcs, type KnownPoint } from './reachArcs';
import { COINCIDENT_M, NEGLIGIBLE_LENGTH_M } from './tolerances';

/** Two known points whose discs are the furthest apart of all: `gap` metres between the rims, negative when they overlap. */
export type WorstPair = Readonly<{ gap: number; first: number; second: number }>;

/** Three known points of which each needs `each` more metres of cable before they have a place in common. */
export type WorstTrio = Readonly<{ each: number; first: number; second: number; third: number }>;

/** The pair with the largest gap, the first of equals; undefined for fewer than two. */
export function worstPair(knowns: readonly KnownPoint[]): WorstPair | undefined {
  let worst: WorstPair | undefined;
  for (const [first, a] of knowns.entries()) {
    for (const [second, b] of knowns.entries()) {
      if (second <= first) continue;
      const gap = distance(a.at, b.at) - (a.cable + b.cable);
      if (worst === undefined || gap > worst.gap) worst = { gap, first, second };
    }
  }
  return worst;
}

/**
 * The trio that needs the most, the first of equals; undefined for fewer than three. Of discs without a common point there are always
 * three without one (Helly's theorem for convex sets in the plane), so these name the contradiction, and with `each` more they all meet.
 */
export function worstTrio(knowns: readonly KnownPoint[]): WorstTrio | undefined {
  let worst: WorstTrio | undefined;
  for (const [first, a] of knowns.entries()) {
    for (const [second, b] of knowns.entries()) {
      if (second <= first) continue;
      for (const [third, c] of knowns.entries()) {
        if (third <= second) continue;
        const { each } = leastLengthening([a, b, c]);
        if (worst === undefined || each > worst.each) worst = { each, first, second, third };
      }
    }
  }
  return worst;
}

/**
 * The least metres that each cable must be longer for a place in common, 0 when they have one, and that place. By bisection down to
 * `NEGLIGIBLE_LENGTH_M`, as discs that all grow alike never lose a common place. Throws a RangeError without any known point.
 */
export function leastLengthening(knowns: readonly KnownPoint[]): Readonly<{ each: number; at: Point }> {
  const [first] = knowns;
  if (first === undefined) throw new RangeError('leastLengthening: no known point');
  const shared = placeIn(knowns);
  if (shared !== undefined) return { each: 0, at: shared };
  const placeWith = (by: number) => placeIn(knowns.map(({ at, cable }) => ({ at, cable: cable + by })));
  let low = 0;
  // with this much all discs reach well past the first known point
  let high = COINCIDENT_M + 2 * Math.max(0, ...knowns.map((k) => distance(k.at, first.at) - k.cable));
  let at = first.at;
  while (high - low > NEGLIGIBLE_LENGTH_M) {
    const middle = (low + high) / 2;
    if (middle <= low || middle >= high) break;
    const place = placeWith(middle);
    if (place === undefined) low = middle;
    else [high, at] = [middle, place];
  }
  return { each: high, at };
}

/** A place in all discs: amid the corners of what they have in common. */
function placeIn(knowns: readonly KnownPoint[]): Point | undefined {
  const arcs = commonArcs(knowns);
  const [only] = arcs;
  if (only !== undefined && arcs.length === 1) return only.at;
  return only && scale(arcs.map(beginOfArc).reduce(add), 1 / arcs.length);
}
