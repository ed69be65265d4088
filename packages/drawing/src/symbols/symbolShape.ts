import type { Point } from '@footmark/geometry';
import { markSymbolNames } from './markSymbolNames';

export const symbolNames = [
  'cleanout',
  'stack',
  'floor-drain',
  'fixture',
  'manhole',
  'tap',
  'tree',
  'trunk',
  'well',
  'pole',
  'hydrant',
  'meter',
  'locate',
  'reference-point',
  'benchmark',
  'spot-level',
  'note',
  'photo-point',
  'mark-chosen',
  'mark-open',
  'set-out-point',
  'set-out-bend',
  'mark-fitted',
  'fitted-point',
  'sonde-computed',
  'tie-end',
  'tie-end-around',
  'flow-arrow',
  'station-tick',
  'land-crossing',
  'pipe-change',
  'pipe-end',
  'dimension-end',
  'ladder',
  ...markSymbolNames,
] as const;
export type SymbolName = (typeof symbolNames)[number];

/**
 * One part of a symbol, in paper mm about (0, 0), y up. `stroke`: outlined with the primitive's stroke; `ink`: filled with its
 * ink; `cover`: filled with the primitive's fill (paper when it has none) and outlined; `bare`: so filled and not outlined. `weight`
 * multiplies the stroke's.
 */
export type SymbolPart = Readonly<{ paint: 'stroke' | 'ink' | 'cover' | 'bare'; weight?: number }> &
  (
    | Readonly<{ kind: 'line'; points: readonly Point[]; closed: boolean }>
    | Readonly<{ kind: 'circle'; centre: Point; radius: number }>
  );

/** Parts in painting order; `clear` is the radius (paper mm) that labels keep off. */
export type SymbolShape = Readonly<{ parts: readonly SymbolPart[]; clear: number }>;
