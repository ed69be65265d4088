import { distance, nearestOnSegment, type Point, stationOf } from '@footmark/geometry';
import { type Derived, type Ref, refKey } from '@footmark/site';
import type { Landing } from '../tools/tool';

/** How near (CSS px) a press must come to be drawn onto a point or a leg. */
export const SNAP_PX = { touch: 22, mouse: 12 };

/**
 * What a press at plan point `p` means: a known point within `reach` (m), else for a pipe the leg of another pipe, else
 * bare ground. `skip` names a point that is itself in hand.
 */
export function landingAt(
  derived: Derived,
  p: Point,
  reach: number,
  options: { legs: boolean; skip?: Ref },
): Landing {
  const skip = options.skip === undefined ? null : refKey(options.skip);
  let best: { ref: Ref; at: Point; gap: number } | null = null;
  for (const [key, resolved] of derived.points) {
    if (key === skip) continue;
    const gap = distance(resolved.at, p);
    if (gap <= reach && (best === null || gap < best.gap)) {
      best = { ref: refOfKey(key), at: resolved.at, gap };
    }
  }
  if (best !== null) return { on: 'point', ref: best.ref, at: best.at };
  return (options.legs ? legUnder(derived, p, reach) : null) ?? { on: 'ground', at: p };
}

function refOfKey(key: string): Ref {
  const cut = key.indexOf('/');
  return { of: key.slice(0, cut), at: key.slice(cut + 1) };
}

function legUnder(derived: Derived, p: Point, reach: number): Landing | null {
  for (const { path, points, line } of derived.paths.values()) {
    if (stationOf(line, p).distance > reach) continue;
    for (const [i, a] of points.entries()) {
      const [b, after] = [points[i + 1], path.vertices[i]];
      if (b === undefined || after === undefined) continue;
      const near = nearestOnSegment(p, a, b);
      if (near.distance <= reach) {
        return {
          on: 'leg',
          junction: { path: path.id, after: after.id, at: near.point },
          at: near.point,
        };
      }
    }
  }
  return null;
}
