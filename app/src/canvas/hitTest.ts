import { type Drawing, type Primitive, symbols } from '@footmark/drawing';
import { nearestOnPolyline, type Point, pointInRing } from '@footmark/geometry';
import type { Target } from '@footmark/site';
import { type Camera, PX_PER_MM, screenToPlan, type ViewSize } from './camera';

/** How near (CSS px) a press must come to a thing. */
export const REACH_PX = { touch: 24, mouse: 9 };

/** A paper-sized symbol wins over a line that runs through it, and a line over the area that it bounds. */
const RANK = { symbol: 0, line: 1, area: 2 } as const;

/** The thing under a press: symbols first, then lines, then areas; among equals the nearest, then the topmost. */
export function hitTest(
  drawing: Drawing,
  camera: Camera,
  size: ViewSize,
  at: Point,
  reachPx: number,
): Target | null {
  const p = screenToPlan(camera, size, at);
  const reach = reachPx / camera.pxPerMetre;
  let best: { target: Target; rank: number; distance: number } | null = null;
  for (const layer of drawing.layers) {
    for (const primitive of layer.primitives) {
      if (primitive.target === undefined) continue;
      const hit = distanceTo(primitive, p, camera);
      if (hit === null || hit.distance > reach) continue;
      const rank = RANK[hit.as];
      if (best === null || rank < best.rank || (rank === best.rank && hit.distance <= best.distance)) {
        best = { target: primitive.target, rank, distance: hit.distance };
      }
    }
  }
  return best?.target ?? null;
}

function distanceTo(
  primitive: Primitive,
  p: Point,
  camera: Camera,
): { readonly as: keyof typeof RANK; readonly distance: number } | null {
  switch (primitive.kind) {
    case 'symbol': {
      const radius = (symbols[primitive.symbol].clear * PX_PER_MM) / camera.pxPerMetre;
      return { as: 'symbol', distance: Math.max(0, gap(p, primitive.at) - radius) };
    }
    case 'circle': {
      const off = gap(p, primitive.centre) - primitive.radius;
      return off <= 0 && primitive.fill
        ? { as: 'area', distance: 0 }
        : { as: 'line', distance: Math.abs(off) };
    }
    case 'line': {
      if (primitive.points.length < 2) return null;
      const edge = nearestOnPolyline(p, primitive.points, primitive.closed).distance;
      const inside = primitive.closed && primitive.fill && pointInRing(p, primitive.points) === 'inside';
      return inside && edge * camera.pxPerMetre > REACH_PX.mouse
        ? { as: 'area', distance: 0 }
        : { as: 'line', distance: edge };
    }
    case 'pattern':
      return primitive.points.length < 2
        ? null
        : { as: 'line', distance: nearestOnPolyline(p, primitive.points, primitive.closed).distance };
  }
}

function gap(a: Point, b: Point): number {
  return Math.hypot(a.x - b.x, a.y - b.y);
}
