import type { Point } from '@footmark/geometry';
import {
  changePathVertex,
  derivePlaces,
  drawnTurn,
  movePoint,
  type Places,
  type Ref,
  SAME_TURN_RAD,
  type Site,
  standardBendOf,
} from '@footmark/site';

/** Moves a point of a planned pipe, and plans the fittings there and at the points beside it anew: bends that it now turns by, else none. */
export function movePlanned(
  site: Site,
  { ref, to, places }: { readonly ref: Ref; readonly to: Point; readonly places: Places['points'] },
): Site {
  const moved = movePoint(site, { ref, to, places });
  const path = moved.paths.find((p) => p.id === ref.of);
  const points = derivePlaces(moved).paths.get(ref.of)?.points ?? [];
  const index = path?.vertices.findIndex((v) => v.id === ref.at) ?? -1;
  return [index - 1, index, index + 1].reduce((s, i) => {
    const vertex = path?.vertices[i];
    const turn = drawnTurn(points, i);
    if (vertex?.bend === undefined || turn === null) return s;
    const bend = standardBendOf(turn, SAME_TURN_RAD);
    return changePathVertex(s, { id: ref.of, at: vertex.id, facts: { bend: bend?.turn } });
  }, moved);
}
