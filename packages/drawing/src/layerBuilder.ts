import type { Point } from '@footmark/geometry';
import { boundsOf, type Drawing, type LayerName, layerNames } from './drawing';
import type { Label } from './label';
import type { Primitive } from './primitive';

/** Collects what is drawn, layer by layer. */
export type LayerBuilder = Readonly<{
  add: (layer: LayerName, ...primitives: readonly Primitive[]) => void;
  label: (layer: LayerName, ...labels: readonly Label[]) => void;
  build: () => Drawing;
}>;

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
      const all = [...layers.values()];
      return { layers: all, bounds: boundsOf(all.flatMap((l) => l.primitives.flatMap(pointsOf))) };
    },
  };
}

function pointsOf(of: Primitive): readonly Point[] {
  switch (of.kind) {
    case 'line':
    case 'pattern':
      return of.points;
    case 'symbol':
      return [of.at];
    case 'circle':
      return [
        { x: of.centre.x - of.radius, y: of.centre.y - of.radius },
        { x: of.centre.x + of.radius, y: of.centre.y + of.radius },
      ];
  }
}
