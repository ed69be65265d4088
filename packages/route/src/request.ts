import type { Point } from '@footmark/geometry';

// What a route is asked for. Plane coordinates and lengths in metres, angles in radians, headings as azimuths clockwise from +y.

/** A thing on the plan as a shape; a line with its half width is as wide as a band. */
export type Shape =
  | { readonly is: 'circle'; readonly centre: Point; readonly radius: number }
  | { readonly is: 'ring'; readonly points: readonly Point[] }
  | { readonly is: 'line'; readonly points: readonly Point[]; readonly halfWidth: number };

/** What a route must keep clear of: from the outside of the pipe to the shape's edge. 0: it may touch and not enter. */
export type Obstacle = { readonly id: string; readonly shape: Shape; readonly clearance: number };

/** Ground that may be gone through at a cost: so much more for each metre in it than elsewhere, in metres of pipe. */
export type Area = { readonly id: string; readonly shape: Shape; readonly perMetre: number };

/**
 * A standard bend. `laying`: from where the legs would meet to the end of the fitting, along either leg; at least the tangent of its arc.
 * `cost`: of one, in metres of pipe.
 */
export type Bend = {
  readonly id: string;
  readonly turn: number;
  readonly radius: number;
  readonly laying: number;
  readonly cost: number;
};

/** Headings from one to the other, clockwise; equal: that one alone. */
export type Headings = { readonly from: number; readonly to: number };

/** A place to arrive at: a point, or anywhere on a straight piece. `headings`: in which the route may come in; null for any. */
export type RouteEnd = {
  readonly id: string;
  readonly at: Point | { readonly from: Point; readonly to: Point };
  readonly headings: readonly Headings[] | null;
  readonly invert: number | null;
};

export type RouteRequest = {
  readonly start: { readonly at: Point; readonly heading: number; readonly invert: number | null };
  readonly ends: readonly RouteEnd[];
  /** Of the pipe, outside. */
  readonly diameter: number;
  readonly bends: readonly Bend[];
  /** At least so much straight pipe between the ends of two fittings. */
  readonly leastStraight: number;
  readonly mostBends: number;
  readonly obstacles: readonly Obstacle[];
  readonly areas: readonly Area[];
  /**
   * Within so much of the start or of an end, what that is already too near to is only kept as far off as it is there: a drain leaves its
   * wall.
   */
  readonly freeEnds: number;
  /** Least fall over run; `kept`: routes that need more fall than there is are left out. */
  readonly grade: { readonly least: number; readonly kept: boolean };
};
