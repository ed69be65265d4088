import type { PathElement, PathLine } from '@footmark/geometry';

/** The longest piece without a bend between two stations (m); null where it is all bend, or nothing. */
export function longestStraight(
  { elements, starts }: PathLine,
  from: number,
  to: number,
): { readonly from: number; readonly to: number } | null {
  let best: { from: number; to: number } | null = null;
  elements.forEach((element: PathElement, i) => {
    if (element.kind !== 'straight') return;
    const start = starts[i] ?? 0;
    const piece = { from: Math.max(from, start), to: Math.min(to, start + element.length) };
    if (piece.to <= piece.from) return;
    if (best === null || piece.to - piece.from > best.to - best.from) best = piece;
  });
  return best;
}
