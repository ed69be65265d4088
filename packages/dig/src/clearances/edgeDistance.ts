import { COINCIDENT_M, type Point, pointInRing } from '@footmark/geometry';
import type { ClearanceFace, DerivedFeature } from '@footmark/site';
import { deepest } from './deepest';
import { type NearestLegs, nearestLegs } from './nearestLegs';
import type { Subject } from './subject';

/**
 * Least distance (m) between the outside of a subject (a pipe's wall, a dig's top edge, the point of a mark) and the face of a feature,
 * negative by how far one reaches into the other; `from` on the one and `at` on the other lie |distance| apart. Of a pipe or a line that is
 * crossed it is less than nothing by both half widths; of an outline that holds the other thing by how deep the deepest place of that
 * lies within, and its half width. To within 2 mm of a bend and `DEPTH_M` of a depth.
 */
export type EdgeDistance = {
  readonly distance: number;
  readonly from: Point;
  readonly at: Point;
  /** Where on a path (plan metres), else null. */
  readonly station: number | null;
  /** The centre line, or the edge, of the one meets that of the other or lies within it. */
  readonly meets: boolean;
};

const found: NearestLegs = {
  own: 0,
  other: 0,
  halfWidth: Number.NaN,
  distance: Number.NaN,
  fromX: Number.NaN,
  fromY: Number.NaN,
  atX: Number.NaN,
  atY: Number.NaN,
};

/** From a subject to one feature, whose face is half a width (m) to either side of its middle. Null when it is not nearer than `reach` (m). */
export function edgeDistance(
  subject: Subject,
  feature: DerivedFeature,
  face: ClearanceFace,
  halfWidth: number,
  reach: number,
): EdgeDistance | null {
  const { outline, spec, bounds } = feature;
  const near = nearestLegs(subject.table, outline, spec.shape === 'area', bounds, reach + halfWidth, found);
  const meets = near && (found.distance <= COINCIDENT_M || thinLegMeets(subject, feature));
  const inside = (meets ? canHold(subject, face) : mayHold(subject, feature, face))
    ? insideOf(subject, feature, face, halfWidth)
    : null;
  if (!near) return inside;
  const { own, fromX, fromY, atX, atY, distance, halfWidth: out } = found;
  const least = distance - out - halfWidth;
  // a thick stretch beside an outline can reach in further than a thin one within it
  if (inside !== null && inside.distance <= least) return inside;
  const { x, y } =
    distance > COINCIDENT_M
      ? { x: (atX - fromX) / distance, y: (atY - fromY) / distance }
      : squareTo(subject, own);
  return {
    distance: least,
    from: { x: fromX + out * x, y: fromY + out * y },
    at: { x: atX - halfWidth * x, y: atY - halfWidth * y },
    station: stationOn(subject, own, fromX, fromY),
    meets: meets || inside !== null,
  };
}

/** Whether a thinner leg than the one that reaches furthest meets the outline. */
function thinLegMeets({ table }: Subject, { outline, spec, bounds }: DerivedFeature): boolean {
  if (found.distance - found.halfWidth > COINCIDENT_M - table.thinnest) return false;
  const bare = { ...table, halfWidths: new Float64Array(table.halfWidths.length) };
  const other = { ...found };
  return (
    nearestLegs(bare, outline, spec.shape === 'area', bounds, Infinity, other) &&
    other.distance <= COINCIDENT_M
  );
}

/** The unit vector square to a leg: lines that meet have no direction between them. */
function squareTo({ table: { legs } }: Subject, leg: number): Point {
  const x = (legs[4 * leg + 2] ?? 0) - (legs[4 * leg] ?? 0);
  const y = (legs[4 * leg + 3] ?? 0) - (legs[4 * leg + 1] ?? 0);
  const length = Math.sqrt(x * x + y * y);
  return length > 0 ? { x: y / length, y: -x / length } : { x: 1, y: 0 };
}

/** Whether of two whose edges meet one can lie within the other. */
function canHold({ ring }: Subject, face: ClearanceFace): boolean {
  return ring !== null || face === 'outline';
}

/** Whether of two whose edges do not meet one lies within the other. */
function mayHold(
  { points, ring }: Subject,
  { outline, bounds }: DerivedFeature,
  face: ClearanceFace,
): boolean {
  const [first] = points;
  const [corner] = outline;
  if (first === undefined || corner === undefined) return false;
  if (face === 'outline') {
    const near =
      first.x >= bounds.minX && first.x <= bounds.maxX && first.y >= bounds.minY && first.y <= bounds.maxY;
    if (near && pointInRing(first, outline) === 'inside') return true;
  }
  return ring !== null && pointInRing(corner, ring) === 'inside';
}

/** What lies within what, by its far side; null where they only touch. */
function insideOf(
  subject: Subject,
  feature: DerivedFeature,
  face: ClearanceFace,
  halfWidth: number,
): EdgeDistance | null {
  const depth = deepest(subject, feature, face);
  if (depth === null) return null;
  const { from, at, distance, halfWidth: out } = depth;
  const x = (at.x - from.x) / distance;
  const y = (at.y - from.y) / distance;
  return {
    distance: distance - out - halfWidth,
    from: { x: from.x + out * x, y: from.y + out * y },
    at: { x: at.x - halfWidth * x, y: at.y - halfWidth * y },
    station: subject.legs === null ? null : stationOn(subject, depth.leg, from.x, from.y),
    meets: true,
  };
}

function stationOn({ legs }: Subject, leg: number, x: number, y: number): number | null {
  if (legs === null) return null;
  const a = legs.points[leg];
  const b = legs.points[leg + 1];
  const from = legs.stations[leg] ?? 0;
  if (a === undefined || b === undefined) return from;
  const length = Math.sqrt((b.x - a.x) ** 2 + (b.y - a.y) ** 2);
  const share = length > 0 ? Math.sqrt((x - a.x) ** 2 + (y - a.y) ** 2) / length : 0;
  return from + share * ((legs.stations[leg + 1] ?? from) - from);
}
