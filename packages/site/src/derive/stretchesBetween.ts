import type { Stretch } from '../document/path';

/** A piece of a stretch, up to a station (plan metres). */
type StretchPiece = Stretch & { readonly to: number };

/** What a pipe is between two stations (plan metres), piece by piece with the flow. */
export function stretchesBetween(
  stretches: readonly Stretch[],
  from: number,
  to: number,
): readonly StretchPiece[] {
  return stretches
    .map((stretch, i) => ({
      ...stretch,
      from: Math.max(stretch.from, from),
      to: Math.min(stretches[i + 1]?.from ?? to, to),
    }))
    .filter((piece) => piece.from < piece.to);
}
