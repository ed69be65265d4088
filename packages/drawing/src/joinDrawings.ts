import { boundsOf, type Drawing } from './drawing';

/** Two drawings of one site as one; in each layer what `over` has comes after what `below` has. `over` null: nothing more. */
export function joinDrawings(below: Drawing, over: Drawing | null): Drawing {
  if (over === null) return below;
  const more = new Map(over.layers.map((layer) => [layer.name, layer]));
  const corners = [below.bounds, over.bounds].flatMap((box) =>
    box === null
      ? []
      : [
          { x: box.minX, y: box.minY },
          { x: box.maxX, y: box.maxY },
        ],
  );
  return {
    layers: below.layers.map((layer) => {
      const { primitives = [], labels = [] } = more.get(layer.name) ?? {};
      if (primitives.length === 0 && labels.length === 0) return layer;
      return {
        name: layer.name,
        primitives: [...layer.primitives, ...primitives],
        labels: [...layer.labels, ...labels],
      };
    }),
    bounds: boundsOf(corners),
  };
}
