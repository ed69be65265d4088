import type { Point } from '@footmark/geometry';
import type { Target } from '@footmark/site';
import type { SymbolName } from './symbols/symbolShape';

// Paper lengths are millimetres at drawing scale (a line's weight, a symbol's size, a text's height): they stay when the
// scale changes. Plan lengths and places are metres in the site frame.

/**
 * What a colour stands for; each renderer has a palette for its theme. The services' inks are the uniform colour code's (APWA /
 * ANSI Z535.1): sewer green, water blue, gas yellow, electric red, communication orange, reclaimed water purple, survey
 * pink, proposed excavation white; `proposed-dash` is the dark in that white. `storm` is drawn apart from the sewer though the code gives both green.
 */
export const inks = [
  'ink',
  'faint',
  'assumed',
  'land',
  'plant',
  'pavement',
  'sewer',
  'proposed',
  'proposed-dash',
  'survey',
  'water',
  'gas',
  'electric',
  'communication',
  'reclaimed-water',
  'storm',
  'warning',
  'paper',
] as const;
export type Ink = (typeof inks)[number];

/**
 * `weight` and `dash` (dash, gap, dash, gap …; even count) in paper mm. Without `dash` the line is solid, without `opacity`
 * (0 to 1) it is opaque. Ends are cut square, corners are round.
 */
export type Stroke = Readonly<{ ink: Ink; weight: number; dash?: readonly number[]; opacity?: number }>;

/** `opacity` in (0, 1]; `hatch` lines instead of a tint: see `hatchLines`. */
export type Fill = Readonly<{ ink: Ink; opacity: number; hatch?: 'diagonal' }>;

/** Ornaments that repeat along a line at a paper distance; `expandPattern` makes lines of them for a scale. */
export type PatternName = 'fence' | 'hedge' | 'curb' | 'retaining-wall' | 'flow' | 'unseen' | 'slope';

export type LinePrimitive = Readonly<{
  kind: 'line';
  /** `closed`: the leg from the last point to the first is understood. */
  points: readonly Point[];
  closed: boolean;
  stroke?: Stroke;
  fill?: Fill;
  target?: Target;
}>;

export type CirclePrimitive = Readonly<{
  kind: 'circle';
  centre: Point;
  /** Metres: true size. */
  radius: number;
  stroke?: Stroke;
  fill?: Fill;
  target?: Target;
}>;

export type SymbolPrimitive = Readonly<{
  kind: 'symbol';
  at: Point;
  symbol: SymbolName;
  /** Where the symbol's +y points: radians clockwise from plan north. */
  azimuth: number;
  /** Its dash is for the parts that cover only: the outline of what was placed by eye. */
  stroke: Stroke;
  /** Of the parts that cover what lies below; paper when absent. */
  fill?: Fill;
  target?: Target;
}>;

export type PatternPrimitive = Readonly<{
  kind: 'pattern';
  points: readonly Point[];
  closed: boolean;
  pattern: PatternName;
  /** Paper mm from one ornament to the next. */
  spacing: number;
  /** Metres that ornaments reach beside the line at most. */
  reach?: number;
  stroke: Stroke;
  target?: Target;
}>;

export type Primitive = LinePrimitive | CirclePrimitive | SymbolPrimitive | PatternPrimitive;
