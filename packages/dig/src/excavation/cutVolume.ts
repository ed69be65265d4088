import { distance, regionArea } from '@footmark/geometry';
import { type Cut, cutLayer, deeperThan, noDeeperThan } from './cut';

/** What is dug out, m³: what stands straight at the bottom, and what is cut back above it. */
export function cutVolume(cut: Cut): number {
  if (cut.upright === 0) return volumeCutBack(cut);
  const straight = { ...cut, points: noDeeperThan(cut.points, cut.upright), slope: 0, upright: 0 };
  const above = deeperThan(cut.points, cut.upright).map((piece) => ({
    ...cut,
    points: piece.map((point) => ({ ...point, depth: point.depth - cut.upright })),
    upright: 0,
  }));
  return [straight, ...above].reduce((sum, part) => sum + volumeCutBack(part), 0);
}

/**
 * Of a dig that is cut back from its bottom on. It is cut into layers by the share of its depth; a layer's thickness follows the depth and its area is a
 * quadratic in the share, so the prismoidal rule over bottom, middle and top is exact for any straight run, its ends, and corners as
 * long as they are mitred. Where legs overlap or corners are cut off, each layer counts with the area that it truly has.
 */
function volumeCutBack(cut: Cut): number {
  const [bottom, middle, top] = [0, 0.5, 1].map((share) => layerVolume(cut, share)) as [
    number,
    number,
    number,
  ];
  return (bottom + 4 * middle + top) / 6;
}

/** ∫ depth × width along the line and over the ends, at a share of the depth, corrected to the layer's own area. */
function layerVolume(cut: Cut, share: number): number {
  const { points, width, slope } = cut;
  const widthAt = (depth: number) => width + 2 * slope * depth * share;
  let [area, volume] = [0, 0];
  for (const [i, { at, depth }] of points.entries()) {
    const next = points[i + 1];
    if (next === undefined) break;
    const length = distance(at, next.at);
    const half = (depth + next.depth) / 2;
    area += length * widthAt(half);
    // depth and width both change evenly, so their product is a quadratic and the prismoidal rule exact
    volume +=
      (length / 6) * (depth * widthAt(depth) + 4 * half * widthAt(half) + next.depth * widthAt(next.depth));
  }
  for (const end of [points[0], points.at(-1)]) {
    const reach = slope * (end?.depth ?? 0) * share;
    const piece = reach * widthAt(end?.depth ?? 0);
    area += piece;
    volume += piece * (end?.depth ?? 0);
  }
  return area === 0 ? 0 : (volume * regionArea(cutLayer(cut, share))) / area;
}
