import { cross, distance, type Point, scale, subtract } from '@footmark/geometry';
import type { GivenPaint } from '../document/asFound';
import { refKey } from '../document/pointOwners';
import type { Site } from '../document/site';
import type { Spot } from '../document/spot';
import { faceRadiusOf } from './faceRadius';
import { sideOf } from './side';

/** Tapes that run almost in one line (sine of their angle below this) fix nothing. */
const WEAKEST_SINE = 0.1;

/**
 * A place that was measured from paint as tapes from what the paint was taped from: so it hangs on the same references as the paint, and
 * goes with them. The two that cut best of those that were given; coordinates where there are no such two.
 */
export function foundSpot(
  site: Site,
  points: ReadonlyMap<string, { readonly at: Point }>,
  given: GivenPaint | undefined,
  at: Point,
): Spot {
  const tapes = (given?.ties ?? []).flatMap(({ from }) => {
    const place = points.get(refKey(from))?.at;
    const feature = site.features.find((f) => f.id === from.of);
    if (place === undefined || feature === undefined) return [];
    const straight = distance(place, at);
    const pulled = straight - faceRadiusOf(feature);
    return pulled <= 0
      ? []
      : [{ place, toward: scale(subtract(place, at), 1 / straight), tape: { from, distance: pulled } }];
  });
  let best: Spot = { by: 'coordinates', x: at.x, y: at.y };
  let most = WEAKEST_SINE;
  for (const [i, a] of tapes.entries()) {
    for (const b of tapes.slice(i + 1)) {
      const sine = Math.abs(cross(a.toward, b.toward));
      if (sine <= most) continue;
      most = sine;
      best = { by: 'tapes', tapes: [a.tape, b.tape], side: sideOf(at, a.place, b.place) };
    }
  }
  return best;
}
