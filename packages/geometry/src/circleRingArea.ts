import { visitLegs } from './legs';
import { cross, distance, dot, interpolate, type Point, subtract } from './point';
import type { Region } from './region';

/**
 * Square metres of a disc that lie in a ring, exact: straight legs and the circle's own arcs. The ring counter-clockwise gives a
 * positive area, clockwise a negative one; a place that it goes round twice counts twice. Each leg bounds, with the centre, a triangle
 * where it runs inside the circle and a sector where it does not. Throws a RangeError on a negative radius.
 */
export function circleRingArea(centre: Point, radius: number, ring: readonly Point[]): number {
  if (!(radius >= 0)) throw new RangeError(`circleRingArea: radius ${radius}`);
  let area = 0;
  visitLegs(ring, true, (a, b) => {
    area += legArea(subtract(a, centre), subtract(b, centre), radius);
  });
  return area;
}

/** Square metres of a disc that lie in a region as `unionOf` and its like give it: holes run clockwise. */
export function circleRegionArea(centre: Point, radius: number, region: Region): number {
  return Math.max(
    0,
    region.reduce((sum, ring) => sum + circleRingArea(centre, radius, ring), 0),
  );
}

/** Signed area that the leg ab, seen from the centre of the circle at the origin, bounds within the circle. */
function legArea(a: Point, b: Point, radius: number): number {
  const length = distance(a, b);
  if (length === 0) return 0;
  const along = subtract(b, a);
  const aside = Math.abs(cross(a, b)) / length;
  if (aside >= radius) return sector(a, b, radius);
  const halfChord = Math.sqrt((radius - aside) * (radius + aside));
  const foot = -dot(a, along) / length;
  const [enters, leaves] = [(foot - halfChord) / length, (foot + halfChord) / length];
  if (leaves <= 0 || enters >= 1) return sector(a, b, radius);
  const p = enters > 0 ? interpolate(a, b, enters) : a;
  const q = leaves < 1 ? interpolate(a, b, leaves) : b;
  return (enters > 0 ? sector(a, p, radius) : 0) + cross(p, q) / 2 + (leaves < 1 ? sector(q, b, radius) : 0);
}

function sector(a: Point, b: Point, radius: number): number {
  return (radius * radius * Math.atan2(cross(a, b), dot(a, b))) / 2;
}
