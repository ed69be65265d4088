import { add, cross, dot, type Point, scale, subtract } from './point';
import { fail, ok, type Result } from './result';
import { COINCIDENT_M } from './tolerances';

/** X = a·x − b·y + tx, Y = b·x + a·y + ty: turns, stretches alike in all directions and moves, and never mirrors. */
export type Similarity = Readonly<{ a: number; b: number; tx: number; ty: number }>;

/** A point in both systems. `weight` counts how sure the pair is, 1 when absent. */
export type PointPair = Readonly<{ from: Point; to: Point; weight?: number }>;

export type SimilarityFit = Readonly<{
  transform: Similarity;
  scale: number;
  /** Radians that the transform turns by, counter-clockwise, in (−π, π]. */
  rotation: number;
  /** By pair: transformed minus given, in units of `to`. */
  residuals: readonly Point[];
  /** Standard deviation of unit weight; null where nothing is left over to tell it from. */
  s0: number | null;
}>;

/** `too-few-pairs`: under two; `coincident-points`: all in one place, or without any direction in common. */
export type SimilarityProblem = 'too-few-pairs' | 'coincident-points';

/**
 * The similarity that maps `from` onto `to` with the least weighted sum of squared residuals (2-D conformal or Helmert
 * transformation, any surveying text, in its closed form about the weighted centres); exact for two pairs.
 */
export function fitSimilarity(pairs: readonly PointPair[]): Result<SimilarityFit, SimilarityProblem> {
  return fit(pairs, ({ along, across, spread }) => ({ a: along / spread, b: across / spread }), 4);
}

/** As `fitSimilarity` with the scale held at 1: turned and moved only. Two pairs leave one residual along their line. */
export function fitRigid(pairs: readonly PointPair[]): Result<SimilarityFit, SimilarityProblem> {
  const unit = ({ along, across }: Sums) => {
    const length = Math.hypot(along, across);
    return { a: along / length, b: across / length };
  };
  return fit(pairs, unit, 3);
}

/** The point in the other system. */
export function applySimilarity({ a, b, tx, ty }: Similarity, p: Point): Point {
  return { x: a * p.x - b * p.y + tx, y: b * p.x + a * p.y + ty };
}

/** The way back. Throws a RangeError for a transform of scale 0. */
export function invertSimilarity({ a, b, tx, ty }: Similarity): Similarity {
  const square = a * a + b * b;
  if (!(square > 0)) throw new RangeError('invertSimilarity: scale 0');
  const [ia, ib] = [a / square, -b / square];
  return { a: ia, b: ib, tx: -(ia * tx - ib * ty), ty: -(ib * tx + ia * ty) };
}

/** Weighted sums over the pairs about their centres: Σ from·to, Σ from×to, Σ |from|². */
type Sums = { readonly along: number; readonly across: number; readonly spread: number };

function fit(
  pairs: readonly PointPair[],
  solve: (sums: Sums) => { a: number; b: number },
  unknowns: 3 | 4,
): Result<SimilarityFit, SimilarityProblem> {
  if (pairs.length < 2) return fail('too-few-pairs', { pairs: pairs.length });
  const weights = pairs.map((p) => p.weight ?? 1);
  const total = weights.reduce((sum, w) => sum + w, 0);
  const centreOf = (points: readonly Point[]) =>
    scale(points.map((p, i) => scale(p, weights[i] ?? 0)).reduce(add), 1 / total);
  const from = centreOf(pairs.map((p) => p.from));
  const to = centreOf(pairs.map((p) => p.to));

  let [along, across, spread, spreadTo] = [0, 0, 0, 0];
  for (const [i, pair] of pairs.entries()) {
    const w = weights[i] ?? 0;
    const [p, q] = [subtract(pair.from, from), subtract(pair.to, to)];
    along += w * dot(p, q);
    across += w * cross(p, q);
    spread += w * dot(p, p);
    spreadTo += w * dot(q, q);
  }
  const least = total * COINCIDENT_M ** 2;
  if (spread <= least || spreadTo <= least || Math.hypot(along, across) <= least)
    return fail('coincident-points');

  const { a, b } = solve({ along, across, spread });
  const transform = { a, b, tx: to.x - a * from.x + b * from.y, ty: to.y - b * from.x - a * from.y };
  // about the centres, where far coordinates do not cost digits
  const residuals = pairs.map((pair) => {
    const p = subtract(pair.from, from);
    return subtract({ x: a * p.x - b * p.y, y: b * p.x + a * p.y }, subtract(pair.to, to));
  });
  const square = residuals.reduce((sum, v, i) => sum + (weights[i] ?? 0) * dot(v, v), 0);
  const freedom = 2 * pairs.length - unknowns;
  return ok({
    transform,
    scale: Math.hypot(a, b),
    rotation: Math.atan2(b, a),
    residuals,
    s0: freedom > 0 ? Math.sqrt(square / freedom) : null,
  });
}
