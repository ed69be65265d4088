import { boundsOf, type Drawing, type LayerName, layerNames } from './drawing';
import type { Label } from './label';
import type { Primitive } from './primitive';
import { primitivePoints } from './primitivePoints';

/** Collects what is drawn, layer by layer. */
export type LayerBuilder = Readonly<{
  add: (layer: LayerName, ...primitives: readonly Primitive[]) => void;
  label: (layer: LayerName, ...labels: readonly Label[]) => void;
  build: () => Drawing;
}>;

/** Layers of zones and distances, which say something of places and not how far the site goes. */
const SAYING_HOW_FAR: ReadonlySet<LayerName> = new Set(['zones', 'root-zones', 'clearances']);

export function layerBuilder(): LayerBuilder {
  const layers = new Map(
    layerNames.map((name) => [name, { name, primitives: [] as Primitive[], labels: [] as Label[] }]),
  );
  const at = (name: LayerName) => {
    const layer = layers.get(name);
    if (layer === undefined) throw new RangeError(`no layer ${name}`);
    return layer;
  };
  return {
    add: (layer, ...primitives) => {
      at(layer).primitives.push(...primitives);
    },
    label: (layer, ...labels) => {
      at(layer).labels.push(...labels);
    },
    build: () => {
      const all = [...layers.values()].map((l) => ({ ...l, primitives: fillsFirst(l.primitives) }));
      const things = all.filter((l) => !SAYING_HOW_FAR.has(l.name));
      return { layers: all, bounds: boundsOf(things.flatMap((l) => l.primitives.flatMap(primitivePoints))) };
    },
  };
}

/** Fills lie below all lines of their layer: the outline of what is crossed stays to be seen. */
function fillsFirst(primitives: readonly Primitive[]): readonly Primitive[] {
  const isFill = (p: Primitive) => p.kind === 'line' && p.stroke === undefined;
  return [...primitives.filter(isFill), ...primitives.filter((p) => !isFill(p))];
}
