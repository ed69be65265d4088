import type { Point } from '@footmark/geometry';
import type { Label } from './label';
import type { Primitive } from './primitive';

/** In painting order: the first lies lowest. */
export const layerNames = [
  'pavement',
  'land',
  'buildings',
  'structures',
  'services',
  'trees',
  'root-zones',
  'excavation',
  'coverage',
  'zones',
  'pipe',
  'fitted',
  'drain',
  'ties',
  'clearances',
  'marks',
  'survey',
  'notes',
] as const;
export type LayerName = (typeof layerNames)[number];

/** What belongs together, is shown and hidden together, and is one layer of a CAD file. */
export type DrawingLayer = Readonly<{
  name: LayerName;
  primitives: readonly Primitive[];
  labels: readonly Label[];
}>;

/** An axis-aligned box in the plan, metres. */
export type Bounds = Readonly<{ minX: number; minY: number; maxX: number; maxY: number }>;

/** A site ready to be painted. Every layer is there, in order, empty ones too. */
export type Drawing = Readonly<{
  layers: readonly DrawingLayer[];
  /** Of everything with a place; null for an empty site. Texts, paper sizes and zones are not counted. */
  bounds: Bounds | null;
}>;

/** The box around points, null for none. */
export function boundsOf(points: readonly Point[]): Bounds | null {
  if (points.length === 0) return null;
  let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const p of points) {
    minX = Math.min(minX, p.x);
    minY = Math.min(minY, p.y);
    maxX = Math.max(maxX, p.x);
    maxY = Math.max(maxY, p.y);
  }
  return { minX, minY, maxX, maxY };
}
