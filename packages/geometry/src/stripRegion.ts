import { unionOf } from './combineRegions';
import { add, cross, distance, dot, type Point, scale, subtract } from './point';
import type { Region } from './region';
import { COINCIDENT_M, MITRE_LIMIT } from './tolerances';

/** A point of a line with how far the strip reaches from it to the left and to the right of the way along it, metres, not negative. */
export type StripPoint = Readonly<{ at: Point; left: number; right: number }>;

type Widths = Readonly<{ left: number; right: number }>;

/** A corner of the line: the widths of the strip that comes in and of that which goes out. */
type Corner = { readonly at: Point; readonly before: Widths; after: Widths };

type Leg = Readonly<{ from: Corner; to: Corner; toward: Point }>;

/**
 * The strip along an open line: as wide as its points say and tapering between them, square at both ends, outer corners mitred up to
 * `MITRE_LIMIT`. Where the line folds or comes back to itself, the strip is all that its legs cover. Two points at one place are a
 * step in width. A line without length gives nothing. Throws a RangeError on a negative width.
 */
export function stripRegion(points: readonly StripPoint[]): Region {
  const legs = legsOf(points);
  const pieces = legs.flatMap((leg, i): readonly (readonly Point[])[] => {
    const next = legs[i + 1];
    const corner = next === undefined ? null : outerCorner(leg, next);
    return corner === null ? [legQuad(leg)] : [legQuad(leg), corner];
  });
  return unionOf(pieces.map((piece) => [piece]));
}

function legsOf(points: readonly StripPoint[]): readonly Leg[] {
  const corners: Corner[] = [];
  for (const { at, left, right } of points) {
    if (!(left >= 0 && right >= 0)) throw new RangeError(`stripRegion: widths ${left}, ${right}`);
    const last = corners.at(-1);
    if (last !== undefined && distance(last.at, at) <= COINCIDENT_M) last.after = { left, right };
    else corners.push({ at, before: { left, right }, after: { left, right } });
  }
  return corners.slice(1).map((to, i) => {
    const from = corners[i] ?? to;
    return { from, to, toward: scale(subtract(to.at, from.at), 1 / distance(from.at, to.at)) };
  });
}

function leftOf({ x, y }: Point): Point {
  return { x: -y, y: x };
}

function legQuad({ from, to, toward }: Leg): readonly Point[] {
  const left = leftOf(toward);
  return [
    add(from.at, scale(left, -from.after.right)),
    add(to.at, scale(left, -to.before.right)),
    add(to.at, scale(left, to.before.left)),
    add(from.at, scale(left, from.after.left)),
  ];
}

/**
 * What lies between two legs on the outer side of their corner. A mitre is w/cos(Δ/2) from the corner; one that is cut off lies, as
 * the arc that it stands for, w from it along the bisector.
 */
function outerCorner(leg: Leg, next: Leg): readonly Point[] | null {
  const { at, before, after } = leg.to;
  const turned = Math.atan2(cross(leg.toward, next.toward), dot(leg.toward, next.toward));
  if (turned === 0) return null;
  const toLeft = turned > 0;
  const width = toLeft ? Math.max(before.right, after.right) : Math.max(before.left, after.left);
  const outward = toLeft ? -width : width;
  const start = add(at, scale(leftOf(leg.toward), outward));
  const end = add(at, scale(leftOf(next.toward), outward));
  const half = Math.abs(turned) / 2;
  if (1 <= MITRE_LIMIT * Math.cos(half)) {
    const tip = add(start, scale(leg.toward, width * Math.tan(half)));
    return [at, start, tip, end];
  }
  const cut = width * Math.tan(half / 2);
  return [at, start, add(start, scale(leg.toward, cut)), add(end, scale(next.toward, -cut)), end];
}
