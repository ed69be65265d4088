type Problem<Code extends string, Values extends object> = {
  readonly code: Code;
  readonly values: Readonly<Values>;
};

/** A part of a request: `id` of an end, obstacle, area or bend; null for what there is one of. */
export type RequestPart = {
  readonly part: 'start' | 'end' | 'obstacle' | 'area' | 'bend' | 'pipe' | 'grade';
  readonly id: string | null;
};

/** What is wrong with a request before any search. Metres and radians. */
export type RequestProblem =
  /** Not finite, or less than nothing where only more makes sense. */
  | Problem<'bad-number', RequestPart>
  /** A ring has at least three corners, a line two points. */
  | Problem<'too-few-points', RequestPart>
  | Problem<'no-end', object>
  /** There is nothing to turn with, and no end lies straight ahead. */
  | Problem<'no-bends', object>
  /** A bend turns by more than nothing and less than about. */
  | Problem<'bend-turn', { bend: string; turn: number }>
  /** Shorter than the tangent of its arc. */
  | Problem<'bend-laying', { bend: string; laying: number; tangent: number }>
  | Problem<'start-inside', { obstacle: string; depth: number }>
  /** A piece: the whole of it. */
  | Problem<'end-inside', { end: string; obstacle: string; depth: number }>
  | Problem<'start-is-end', { end: string }>
  | Problem<'end-not-lower', { end: string; rise: number }>
  /** What even the straight way needs. */
  | Problem<'too-little-fall', { end: string; needed: number; available: number }>
  /** A clearance out of which neither the start nor an end leads; `most` would leave ground at both. */
  | Problem<'no-ground', { obstacle: string; clearance: number; most: number }>;
