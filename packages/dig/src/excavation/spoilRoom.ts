import { circleRegionArea, intersectionArea, lineInRegion, type Region, regionBox } from '@footmark/geometry';
import type { TreeZones } from '../trees/treeZones';
import { isNear, OVERLAP_M2, regionOf, type Surroundings } from './surroundings';

/** A boundary that a heap would be carried over for less than this (m) is only touched. */
const TOUCH_M = 0.001;

/**
 * The features that leave no room for a heap: buildings and pavement under it, root zones of trees by the site's rule, and boundaries
 * that run through the ground from the dig's middle line to its far side.
 */
export function blockedBy(
  heap: Region,
  reach: Region,
  around: Surroundings & { readonly trees: readonly TreeZones[] },
): readonly string[] {
  const [heapBox, reachBox] = [regionBox(heap), regionBox(reach)];
  const under = [...around.buildings, ...around.pavements]
    .filter((f) => isNear(f, heapBox) && intersectionArea(heap, regionOf(f)) > OVERLAP_M2)
    .map((f) => f.feature.id);
  const crossed = around.boundaries
    .filter((f) => isNear(f, reachBox) && lineInRegion(f.outline, f.spec.shape === 'area', reach) > TOUCH_M)
    .map((f) => f.feature.id);
  const rooted = around.trees
    .filter(({ at, chosen }) => circleRegionArea(at, chosen.radius, heap) > OVERLAP_M2)
    .map(({ tree }) => tree);
  const found = new Set([...under, ...crossed, ...rooted]);
  return around.all.map((f) => f.feature.id).filter((id) => found.has(id));
}
