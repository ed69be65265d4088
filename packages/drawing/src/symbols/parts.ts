import type { Point } from '@footmark/geometry';
import type { SymbolPart } from './symbolShape';

type XY = readonly [number, number];

export const ORIGIN: Point = { x: 0, y: 0 };

export function circle(paint: SymbolPart['paint'], radius: number, centre: Point = ORIGIN): SymbolPart {
  return { paint, kind: 'circle', centre, radius };
}

export function line(paint: SymbolPart['paint'], ...xy: readonly XY[]): SymbolPart {
  return { paint, kind: 'line', points: xy.map(([x, y]) => ({ x, y })), closed: false };
}

export function ring(paint: SymbolPart['paint'], ...xy: readonly XY[]): SymbolPart {
  return { paint, kind: 'line', points: xy.map(([x, y]) => ({ x, y })), closed: true };
}

export function square(paint: SymbolPart['paint'], half: number): SymbolPart {
  return ring(paint, [-half, -half], [half, -half], [half, half], [-half, half]);
}

export function triangle(paint: SymbolPart['paint'], radius: number): SymbolPart {
  const [x, y] = [radius * Math.cos(Math.PI / 6), radius / 2];
  return ring(paint, [0, radius], [x, -y], [-x, -y]);
}

/** Two strokes across the middle, to `half` either way on both axes. */
export function diagonals(half: number): readonly SymbolPart[] {
  return [line('stroke', [-half, -half], [half, half]), line('stroke', [-half, half], [half, -half])];
}
