import type { Point } from '@footmark/geometry';
import type { RouteEnd, RouteRequest } from '@footmark/route';
import { type Ground, groundTo } from './ground';
import { laidWay, type SlowWay } from './slowWay';

/** Metres. */
const FINEST = 5e-4;

/**
 * The way with the same turns whose straights, and whose place on a straight end, were moved by `step` and less in every combination for as
 * long as that made it cheaper.
 */
export function refined(request: RouteRequest, way: SlowWay, step: number): SlowWay {
  const slides = !('x' in way.end.at) && way.turns.length > 0;
  const free = way.straights.length + (slides ? 1 : 0);
  if (free === 0) return way;
  let best = way;
  let ground = groundTo(request, way.at);
  for (let by = step; by >= FINEST; by /= 2) {
    for (let moved = true; moved; ) {
      moved = false;
      for (const signs of combinations(free)) {
        const next = movedBy(request, ground, { way: best, signs, by });
        if (next === null || next.way.cost >= best.cost - 1e-9) continue;
        best = next.way;
        ground = next.ground;
        moved = true;
      }
    }
  }
  return best;
}

type Move = { readonly way: SlowWay; readonly signs: readonly number[]; readonly by: number };

function movedBy(
  request: RouteRequest,
  ground: Ground,
  { way, signs, by }: Move,
): { readonly way: SlowWay; readonly ground: Ground } | null {
  const straights = way.straights.map((s, i) => s + (signs[i] ?? 0) * by);
  const at = slid(way.end, way.at, (signs[straights.length] ?? 0) * by);
  const under = at === way.at ? ground : groundTo(request, at);
  const laid = laidWay(request, under, { ...way, straights, at });
  return laid === null ? null : { way: laid, ground: under };
}

/** Along a straight end, not beyond it. */
function slid({ at }: RouteEnd, p: Point, by: number): Point {
  if ('x' in at || by === 0) return p;
  const [dx, dy] = [at.to.x - at.from.x, at.to.y - at.from.y];
  const squared = dx * dx + dy * dy;
  const share = ((p.x - at.from.x) * dx + (p.y - at.from.y) * dy) / squared + by / Math.sqrt(squared);
  const kept = Math.min(1, Math.max(0, share));
  return { x: at.from.x + kept * dx, y: at.from.y + kept * dy };
}

/** All of −1, 0 and 1 but for nothing at all. */
function combinations(count: number): readonly (readonly number[])[] {
  let all: readonly (readonly number[])[] = [[]];
  for (let i = 0; i < count; i++) all = all.flatMap((c) => [-1, 0, 1].map((sign) => [...c, sign]));
  return all.filter((c) => c.some((sign) => sign !== 0));
}
