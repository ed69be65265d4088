import { tangentLength } from './curve';
import { FOLD_RAD, NEGLIGIBLE_LENGTH_M } from './tolerances';

/** The radius in force at an inner vertex, 0 for a sharp corner; metres. */
export type FittedBend = Readonly<{ radius: number; tangent: number; reduced: boolean }>;

/**
 * The bends of a path of `legs` (lengths, metres) with one deflection (radians) and one wanted radius
 * (metres) for each inner vertex, made to fit. Where the two tangents on a leg do not fit together, each may
 * have half of it, or what the other leaves if that is more; a bend takes the smaller of what its two legs
 * allow. A turn of `FOLD_RAD` or more gets no arc. The rule is the same read backwards.
 */
export function fitBends(
  legs: readonly number[],
  deflections: readonly number[],
  radii: readonly number[],
): readonly FittedBend[] {
  const wanted = deflections.map((deflection, i) =>
    Math.abs(deflection) < FOLD_RAD ? tangentLength(radii[i] ?? 0, deflection) : 0,
  );
  return deflections.map((deflection, i) => {
    const radius = radii[i] ?? 0;
    if (Math.abs(deflection) >= FOLD_RAD) return { radius: 0, tangent: 0, reduced: radius > 0 };
    const want = wanted[i] ?? 0;
    if (want <= NEGLIGIBLE_LENGTH_M) return { radius: 0, tangent: 0, reduced: false };
    const allowed = Math.min(
      share(legs[i] ?? 0, wanted[i - 1] ?? 0),
      share(legs[i + 1] ?? 0, wanted[i + 1] ?? 0),
    );
    if (want <= allowed) return { radius, tangent: want, reduced: false };
    return { radius: (radius * allowed) / want, tangent: allowed, reduced: true };
  });
}

/** What of a leg a bend may take when the bend at its other end wants `other`. */
function share(leg: number, other: number): number {
  return Math.max(leg / 2, leg - other);
}
