import { azimuthBetween, deflectionBetween, distance, type Point, pointAtAzimuth } from '@footmark/geometry';

/** A straight or an arc of a centre line: `at` gives its point at 0 to `length` metres from its start. */
export type LinePiece = { readonly length: number; readonly at: (along: number) => Point };

/** A turn of more than this (172°) has tangents without end: its corner stays sharp. */
const FOLD = 3;

/**
 * The centre line along legs, with an arc of `radii[i - 1]` at each point `i` between the ends (0 or none given: a sharp corner). Where
 * the tangents of two arcs overlap there is no straight between them.
 */
export function centreLine(points: readonly Point[], radii: readonly number[]): readonly LinePiece[] {
  const pieces: LinePiece[] = [];
  let before = 0;
  for (const [i, from] of points.entries()) {
    const to = points[i + 1];
    if (to === undefined) break;
    const azimuth = azimuthBetween(from, to);
    const next = points[i + 2];
    const turn = next === undefined ? 0 : deflectionBetween(azimuth, azimuthBetween(to, next));
    const radius = Math.abs(turn) < FOLD ? (radii[i] ?? 0) : 0;
    const tangent = radius * Math.tan(Math.abs(turn) / 2);
    const leg = distance(from, to);
    const straight = leg - before - tangent;
    if (straight >= 0) pieces.push(straightPiece(pointAtAzimuth(from, azimuth, before), azimuth, straight));
    if (tangent > 0) pieces.push(arcPiece(pointAtAzimuth(to, azimuth, -tangent), { azimuth, turn, radius }));
    before = tangent;
  }
  return pieces;
}

export function developedLength(line: readonly LinePiece[]): number {
  return line.reduce((sum, piece) => sum + piece.length, 0);
}

function straightPiece(from: Point, azimuth: number, length: number): LinePiece {
  return { length, at: (along) => pointAtAzimuth(from, azimuth, along) };
}

type Arc = { readonly azimuth: number; readonly turn: number; readonly radius: number };

/** By its long chord (2 R sin(d/2), at half the deflection from the tangent). */
function arcPiece(from: Point, { azimuth, turn, radius }: Arc): LinePiece {
  return {
    length: radius * Math.abs(turn),
    at: (along) => {
      const half = along / radius / 2;
      return pointAtAzimuth(from, azimuth + Math.sign(turn) * half, 2 * radius * Math.sin(half));
    },
  };
}
