import { distance, type Point } from '@footmark/geometry';
import type { DerivedFeature } from '@footmark/site';

/** Boundary lines that meet end to end, as one line; closed when its ends meet. */
export type BoundaryChain = {
  /** The lines, in the order in which they were joined. */
  readonly features: readonly string[];
  readonly points: readonly Point[];
  readonly closed: boolean;
  /** Between its ends (m). */
  readonly gap: number;
};

/** Ends nearer than this (m) to each other are drawn at the same corner: about what a finger misses by. */
const SAME_CORNER_M = 0.05;

/** Joins lines whose ends meet, each to the first that fits. */
export function boundaryChains(lines: readonly DerivedFeature[]): readonly BoundaryChain[] {
  const open = lines.map(({ feature, outline }) => ({ features: [feature.id], points: outline }));
  const chains: BoundaryChain[] = [];
  for (let chain = open.shift(); chain !== undefined; chain = open.shift()) {
    let { features, points } = chain;
    for (;;) {
      const next = isClosed(points) ? -1 : open.findIndex((other) => joined(points, other.points) !== null);
      const [other] = next < 0 ? [] : open.splice(next, 1);
      const whole = other === undefined ? null : joined(points, other.points);
      if (other === undefined || whole === null) break;
      points = whole;
      features = [...features, ...other.features];
    }
    const closed = isClosed(points);
    chains.push({ features, points: closed ? points.slice(0, -1) : points, closed, gap: gapOf(points) });
  }
  return chains;
}

/** A line of three corners and more that comes back to its start. */
function isClosed(points: readonly Point[]): boolean {
  return points.length > 3 && gapOf(points) <= SAME_CORNER_M;
}

function gapOf(points: readonly Point[]): number {
  const [first, last] = [points[0], points.at(-1)];
  return first === undefined || last === undefined ? 0 : distance(first, last);
}

/** The second line set to the first where an end of the one meets an end of the other; null where none does. */
function joined(a: readonly Point[], b: readonly Point[]): readonly Point[] | null {
  const meet = (p: Point | undefined, q: Point | undefined) =>
    p !== undefined && q !== undefined && distance(p, q) <= SAME_CORNER_M;
  if (meet(a.at(-1), b[0])) return [...a, ...b.slice(1)];
  if (meet(a.at(-1), b.at(-1))) return [...a, ...b.toReversed().slice(1)];
  if (meet(a[0], b.at(-1))) return [...b, ...a.slice(1)];
  if (meet(a[0], b[0])) return [...b.toReversed(), ...a.slice(1)];
  return null;
}
