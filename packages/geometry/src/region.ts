import type { Point } from './point';

/**
 * A piece of the plane by the rings round it, each without its first corner repeated. A place belongs to it when an odd number of its
 * rings goes round that place, whatever their sense and however they cross. As a result its rings neither cross nor overlap, outer
 * ones run counter-clockwise and holes clockwise, and none has a corner on a straight line. Without rings: nothing.
 */
export type Region = readonly (readonly Point[])[];

/** The box of a region: least and greatest coordinates, metres; of nothing Infinity to −Infinity. */
export type RegionBox = Readonly<{ minX: number; minY: number; maxX: number; maxY: number }>;

export function regionBox(region: Region): RegionBox {
  let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const ring of region) {
    for (const { x, y } of ring) {
      [minX, maxX] = [Math.min(minX, x), Math.max(maxX, x)];
      [minY, maxY] = [Math.min(minY, y), Math.max(maxY, y)];
    }
  }
  return { minX, minY, maxX, maxY };
}

export function boxesMeet(a: RegionBox, b: RegionBox): boolean {
  return a.minX <= b.maxX && b.minX <= a.maxX && a.minY <= b.maxY && b.minY <= a.maxY;
}
