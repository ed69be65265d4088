import { distance, interpolate } from '@footmark/geometry';
import { ruleValue, type Site } from '@footmark/site';
import type { CutPoint } from './cut';
import type { EgressPlace } from './excavation';
import type { Say } from './excavationFinding';

/** Lengths that differ by less (m) are the same: feet that became metres. */
const SAME_M = 1e-6;

/**
 * Where ladders or ramps stand so that from no place that is deep enough to ask for one it is further than the rule's travel along the
 * dig: even over each deep stretch of the pieces of which the depth is known; `atLeast` where that is not all of it.
 */
export function egressPlaces(
  site: Site,
  pieces: readonly (readonly CutPoint[])[],
  atLeast: boolean,
  say: Say,
): readonly EgressPlace[] {
  const [limit, travel] = [ruleValue(site, 'egressDepth'), ruleValue(site, 'egressTravel')];
  const places = pieces.flatMap((points) => placesAlong(points, limit, travel));
  const [first] = places;
  if (first === undefined) return places;
  const depth = Math.max(...pieces.flat().map((p) => p.depth));
  say(
    'egress-needed',
    'must',
    { depth, limit, places: places.length, travel, atLeast },
    { rule: 'egressDepth', place: first.at },
  );
  return places;
}

function placesAlong(points: readonly CutPoint[], limit: number, travel: number): readonly EgressPlace[] {
  const places: EgressPlace[] = [];
  for (const stretch of deepStretches(points, limit)) {
    const length = stretch.to - stretch.from;
    const count = Math.max(1, Math.ceil((length - SAME_M) / (2 * travel)));
    for (let i = 0; i < count; i += 1) {
      const place = placeAlong(points, stretch.from + ((i + 0.5) * length) / count);
      if (place !== null) places.push(place);
    }
  }
  return places;
}

type Along = { from: number; to: number };

/** Stretches of the line, in metres along it, at least as deep as the limit. */
function deepStretches(points: readonly CutPoint[], limit: number): readonly Along[] {
  const found: Along[] = [];
  let start = 0;
  for (const [i, a] of points.entries()) {
    const b = points[i + 1];
    if (b === undefined) break;
    const length = distance(a.at, b.at);
    const piece = deepPiece(a.depth, b.depth, limit);
    if (piece !== null && length > 0) {
      const [from, to] = [start + piece.from * length, start + piece.to * length];
      const last = found.at(-1);
      if (last !== undefined && from - last.to <= SAME_M) last.to = to;
      else found.push({ from, to });
    }
    start += length;
  }
  return found;
}

/** The part, 0 to 1, of a piece between two depths that is at least as deep as the limit. */
function deepPiece(a: number, b: number, limit: number): Along | null {
  if (Math.min(a, b) >= limit - SAME_M) return { from: 0, to: 1 };
  if (Math.max(a, b) < limit - SAME_M) return null;
  const t = Math.min(1, Math.max(0, (limit - a) / (b - a)));
  return a > b ? { from: 0, to: t } : { from: t, to: 1 };
}

function placeAlong(points: readonly CutPoint[], along: number): EgressPlace | null {
  let start = 0;
  for (const [i, a] of points.entries()) {
    const b = points[i + 1];
    if (b === undefined) break;
    const length = distance(a.at, b.at);
    if (length > 0 && along <= start + length) {
      const t = (along - start) / length;
      return { at: interpolate(a.at, b.at, t), station: a.station + t * (b.station - a.station) };
    }
    start += length;
  }
  return null;
}
