import type { Drawing, DrawingLayer, Label, Primitive, SymbolName } from '@footmark/drawing';
import { normalizeAzimuth, rotate } from '@footmark/geometry';

/** Symbols that show a direction on the ground and so turn with it; all others stand upright on the paper. */
const DIRECTED: ReadonlySet<SymbolName> = new Set([
  'flow-arrow',
  'station-tick',
  'land-crossing',
  'pipe-change',
  'pipe-end',
  'dimension-end',
  'ladder',
]);

/** A drawing turned counter-clockwise by `turn` (rad) about the site's origin, before texts have their places. Its bounds are left open. */
export function turnDrawing(drawing: Drawing, turn: number): Drawing {
  if (turn === 0) return drawing;
  return { layers: drawing.layers.map((layer) => turnLayer(layer, turn)), bounds: null };
}

function turnLayer({ name, primitives, labels }: DrawingLayer, turn: number): DrawingLayer {
  return {
    name,
    primitives: primitives.map((p) => turnPrimitive(p, turn)),
    labels: labels.map((label) => turnLabel(label, turn)),
  };
}

function turnPrimitive(primitive: Primitive, turn: number): Primitive {
  switch (primitive.kind) {
    case 'line':
    case 'pattern':
      return { ...primitive, points: primitive.points.map((p) => rotate(p, turn)) };
    case 'circle':
      return { ...primitive, centre: rotate(primitive.centre, turn) };
    case 'symbol':
      return {
        ...primitive,
        at: rotate(primitive.at, turn),
        azimuth: DIRECTED.has(primitive.symbol)
          ? normalizeAzimuth(primitive.azimuth - turn)
          : primitive.azimuth,
      };
  }
}

function turnLabel(label: Label, turn: number): Label {
  const { along, elsewhere } = label;
  return {
    ...label,
    at: rotate(label.at, turn),
    ...(along === undefined ? {} : { along: { ...along, azimuth: normalizeAzimuth(along.azimuth - turn) } }),
    ...(elsewhere === undefined ? {} : { elsewhere: elsewhere.map((p) => rotate(p, turn)) }),
  };
}
