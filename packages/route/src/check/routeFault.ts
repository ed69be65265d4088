import type { Point } from '@footmark/geometry';

type Fault<Code extends string, Values extends object> = {
  readonly code: Code;
  /** Where on the plan. */
  readonly at: Point;
  readonly values: Readonly<Values>;
};

/**
 * What is wrong with a route. Metres and radians; turns to the right are positive. `vertex` and `leg` count from 0: vertex 0 is the start,
 * leg 0 leaves it.
 */
export type RouteFault =
  /** Fewer than two points, or a coordinate that is no number: nothing else is looked at. */
  | Fault<'no-line', { points: number }>
  | Fault<'unknown-end', { end: string }>
  | Fault<'unknown-bend', { vertex: number; bend: string }>
  /** Not one bend for each vertex between start and end. */
  | Fault<'bend-count', { bends: number; vertices: number }>
  | Fault<'too-many-bends', { bends: number; most: number }>
  | Fault<'start-elsewhere', { away: number }>
  | Fault<'start-heading', { heading: number; asked: number }>
  | Fault<'end-elsewhere', { end: string; away: number }>
  | Fault<'end-heading', { end: string; heading: number }>
  | Fault<'wrong-turn', { vertex: number; bend: string; turn: number; asked: number }>
  | Fault<'short-leg', { leg: number; length: number; least: number }>
  /** Where it is worst, once for each obstacle; `clearance` from the outside of the pipe to the edge, negative inside. */
  | Fault<'too-near', { obstacle: string; clearance: number; asked: number }>
  | Fault<'too-little-fall', { needed: number; available: number }>;
