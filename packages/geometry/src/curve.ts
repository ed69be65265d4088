// The circular curve between two tangents, as any route-surveying text has it: radius R in metres, deflection Δ in radians.
// The sign of Δ does not matter; |Δ| must be under π for the tangents to meet.

/** T = R·tan(Δ/2): from the corner to where the arc begins, metres. */
export function tangentLength(radius: number, deflection: number): number {
  return radius * Math.tan(Math.abs(deflection) / 2);
}

/** L = R·Δ, metres. */
export function arcLength(radius: number, deflection: number): number {
  return radius * Math.abs(deflection);
}

/** Straight from the arc's beginning to its end, 2R·sin(Δ/2), metres. */
export function longChord(radius: number, deflection: number): number {
  return 2 * radius * Math.sin(Math.abs(deflection) / 2);
}

/** From the corner to the arc's middle, R·(sec(Δ/2) − 1), metres. */
export function external(radius: number, deflection: number): number {
  // sec a − 1 = tan a · tan(a/2), without the cancellation at small angles.
  return tangentLength(radius, deflection) * Math.tan(Math.abs(deflection) / 4);
}

/** From the arc's middle to the middle of its chord, R·(1 − cos(Δ/2)), metres. */
export function middleOrdinate(radius: number, deflection: number): number {
  return 2 * radius * Math.sin(deflection / 4) ** 2;
}

/** What a cable round the arc is shorter than one round the corner, 2T − L, metres. */
export function cableSaved(radius: number, deflection: number): number {
  return 2 * tangentLength(radius, deflection) - arcLength(radius, deflection);
}
