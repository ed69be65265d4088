import { type Drawing, type DrawingLayer, type LayerName, primitivePoints } from '@footmark/drawing';
import type { Point } from '@footmark/geometry';

/** What a plan must show whole. Streets, mains and services go on beyond it and are cut at its window. */
const WHOLE: ReadonlySet<LayerName> = new Set(['land', 'buildings', 'pipe', 'marks', 'ties', 'excavation']);

/** The points of all that must be on the plan; of everything, where there is nothing of that. */
export function corePoints({ layers }: Drawing): readonly Point[] {
  const core = layers.flatMap((layer) => (WHOLE.has(layer.name) ? pointsIn(layer) : symbolsIn(layer)));
  return core.length > 0 ? core : layers.flatMap(pointsIn);
}

function pointsIn({ primitives }: DrawingLayer): readonly Point[] {
  return primitives.flatMap(primitivePoints);
}

/** Of the drain its manholes, cleanouts and taps. */
function symbolsIn({ name, primitives }: DrawingLayer): readonly Point[] {
  return name === 'drain' ? primitives.flatMap((p) => (p.kind === 'symbol' ? [p.at] : [])) : [];
}
