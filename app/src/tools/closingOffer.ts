import { distance, type Point } from '@footmark/geometry';
import { followsPrevious, type LegSpot } from '@footmark/site';
import type { DrawTool } from './tool';

/** A last leg that ends within this share of the way round from the first corner is meant to close the outline. */
const CLOSES_WITHIN = 1 / 50;

/**
 * The last typed leg of an outline that comes back to its first corner, and by how much (m) it misses it: to be kept as the closing
 * course instead of making one corner too many. Null while it does not.
 */
export function closingOffer(
  tool: DrawTool,
  places: readonly Point[],
): { readonly spot: LegSpot; readonly off: number } | null {
  const last = tool.points.at(-1)?.spot;
  const [first, end] = [places[0], places.at(-1)];
  if (tool.shape !== 'area' || places.length < 4 || places.length !== tool.points.length) return null;
  if (last === undefined || first === undefined || end === undefined || !followsPrevious(last)) return null;
  const round = places.slice(1).reduce((sum, p, i) => sum + distance(places[i] ?? p, p), 0);
  const off = distance(first, end);
  return off <= round * CLOSES_WITHIN ? { spot: last, off } : null;
}
