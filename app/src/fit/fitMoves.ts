import type { RunsFit } from '@footmark/site';

/** What would move furthest, were the fit taken. */
export type FitMoves = {
  readonly mark: { readonly reading: string; readonly by: number } | null;
  readonly point: { readonly path: string; readonly vertex: string | null; readonly by: number } | null;
};

/** Nothing moves further than what is said to be the same. */
export function fitMoves(fit: RunsFit): FitMoves {
  let mark: FitMoves['mark'] = null;
  for (const [reading, { fitted }] of fit.marks) {
    if (fitted !== null && fitted.off > (mark?.by ?? 0)) mark = { reading, by: fitted.off };
  }
  let point: FitMoves['point'] = null;
  for (const { id, points } of fit.paths) {
    for (const { vertex, moved } of points) {
      if (moved > (point?.by ?? 0)) point = { path: id, vertex, by: moved };
    }
  }
  return { mark, point };
}
