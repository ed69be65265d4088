import type { Point } from './point';

const TURN = 2 * Math.PI;

export function degrees(rad: number): number {
  return (rad * 180) / Math.PI;
}

export function radians(deg: number): number {
  return (deg * Math.PI) / 180;
}

/** The same direction in [0, 2π), radians. */
export function normalizeAzimuth(azimuth: number): number {
  return ((azimuth % TURN) + TURN) % TURN;
}

/** The same angle in (−π, π], radians. */
export function signedAngle(angle: number): number {
  const turned = normalizeAzimuth(angle);
  return turned > Math.PI ? turned - TURN : turned;
}

/**
 * Azimuth from `a` to `b`: radians clockwise from +y (site north), in [0, 2π). Points at the very same place
 * have none and give 0: ask `equalPoints` first where that can be.
 */
export function azimuthBetween(a: Point, b: Point): number {
  return normalizeAzimuth(Math.atan2(b.x - a.x, b.y - a.y));
}

/** The point `distance` metres from `from` in the direction `azimuth` (radians clockwise from +y). */
export function pointAtAzimuth(from: Point, azimuth: number, distance: number): Point {
  return { x: from.x + distance * Math.sin(azimuth), y: from.y + distance * Math.cos(azimuth) };
}

/** The turn from one azimuth to another, radians in (−π, π]: positive to the right (clockwise). */
export function deflectionBetween(azimuthIn: number, azimuthOut: number): number {
  return signedAngle(azimuthOut - azimuthIn);
}
