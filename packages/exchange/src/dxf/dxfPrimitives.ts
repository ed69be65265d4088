import { expandPattern, type Primitive, type SymbolPrimitive, symbols } from '@footmark/drawing';
import { type Point, rotate } from '@footmark/geometry';
import type { DxfPen } from './dxfPen';

/** From the plan (m) into the file's coordinates: places, and lengths there. */
export type DxfFrame = {
  readonly mmPerMetre: number;
  place(p: Point): Point;
  /** A length (m) in the file's unit. */
  length(metres: number): number;
  /** How far (rad, counterclockwise) the plan is turned in the file. */
  readonly turn: number;
};

/** Draws a primitive. Tints and hatching are left out: they are paper's, and R12 has none. */
export function drawPrimitive(primitive: Primitive, layer: string, pen: DxfPen, frame: DxfFrame): void {
  switch (primitive.kind) {
    case 'line':
      if (primitive.stroke === undefined) return;
      pen.line(primitive.points.map(frame.place), primitive.closed, { layer, stroke: primitive.stroke });
      return;
    case 'circle':
      if (primitive.stroke === undefined) return;
      pen.circle(frame.place(primitive.centre), frame.length(primitive.radius), {
        layer,
        stroke: primitive.stroke,
      });
      return;
    case 'pattern':
      for (const part of expandPattern(primitive, frame.mmPerMetre)) drawPrimitive(part, layer, pen, frame);
      return;
    case 'symbol':
      drawSymbol(primitive, layer, pen, frame);
  }
}

function drawSymbol(
  { at, symbol, azimuth, stroke }: SymbolPrimitive,
  layer: string,
  pen: DxfPen,
  frame: DxfFrame,
) {
  const place = (mm: Point): Point => {
    const turned = rotate(mm, -azimuth);
    return frame.place({ x: at.x + turned.x / frame.mmPerMetre, y: at.y + turned.y / frame.mmPerMetre });
  };
  for (const part of symbols[symbol].parts) {
    if (part.paint === 'bare') continue;
    // the dash of a symbol is its rim's
    const { dash, ...solid } = stroke;
    const partPen = {
      layer,
      stroke: part.paint === 'cover' && dash !== undefined ? { ...solid, dash } : solid,
    };
    if (part.kind === 'circle') {
      pen.circle(place(part.centre), frame.length(part.radius / frame.mmPerMetre), partPen);
    } else pen.line(part.points.map(place), part.closed, partPen);
  }
}
