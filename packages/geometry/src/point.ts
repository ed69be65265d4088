import { COINCIDENT_M } from './tolerances';

/** A place or a displacement in the plane: metres, x east-ish, y north-ish, right-handed. */
export type Point = Readonly<{ x: number; y: number }>;

export function add(a: Point, b: Point): Point {
  return { x: a.x + b.x, y: a.y + b.y };
}

/** The displacement from `b` to `a`. */
export function subtract(a: Point, b: Point): Point {
  return { x: a.x - b.x, y: a.y - b.y };
}

export function scale(a: Point, factor: number): Point {
  return { x: a.x * factor, y: a.y * factor };
}

/** Scalar product, square metres. */
export function dot(a: Point, b: Point): number {
  return a.x * b.x + a.y * b.y;
}

/**
 * Signed area of the parallelogram of two displacements, square metres: positive when `b` points left of `a`.
 */
export function cross(a: Point, b: Point): number {
  return a.x * b.y - a.y * b.x;
}

/** Plane distance, metres. */
export function distance(a: Point, b: Point): number {
  // Not Math.hypot, which is several times slower: coordinates in metres cannot overflow when squared.
  return Math.sqrt((b.x - a.x) ** 2 + (b.y - a.y) ** 2);
}

export function midpoint(a: Point, b: Point): Point {
  return { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
}

/**
 * The point at `t` of the way from `a` (0) to `b` (1), exact at both ends; outside [0, 1] it extrapolates.
 */
export function interpolate(a: Point, b: Point, t: number): Point {
  return t === 1 ? b : { x: a.x + (b.x - a.x) * t, y: a.y + (b.y - a.y) * t };
}

/** `p` turned counter-clockwise by `angle` radians about `about` (the origin when not given). */
export function rotate(p: Point, angle: number, about: Point = { x: 0, y: 0 }): Point {
  const cos = Math.cos(angle);
  const sin = Math.sin(angle);
  const dx = p.x - about.x;
  const dy = p.y - about.y;
  return { x: about.x + dx * cos - dy * sin, y: about.y + dx * sin + dy * cos };
}

/** True when both lie within `COINCIDENT_M` of each other. Not transitive, as no tolerance is. */
export function equalPoints(a: Point, b: Point): boolean {
  return distance(a, b) <= COINCIDENT_M;
}
