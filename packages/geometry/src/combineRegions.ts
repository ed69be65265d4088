import type { Point } from './point';
import { boxesMeet, type Region, regionBox } from './region';
import { outlineOfSlabs } from './regionOutline';
import { type Holds, type Slab, sideAt, slabsOf } from './regionSlabs';

const inAny: Holds = (inside) => inside > 0;
const inBoth: Holds = (inside) => inside === 2;
const inFirstOnly: Holds = (inside, inFirst) => inFirst && inside === 1;

/** All that lies in any of the regions. What overlaps or touches along an edge becomes one piece. */
export function unionOf(regions: readonly Region[]): Region {
  return combined(regions, inAny);
}

/** What lies in both. */
export function intersectionOf(a: Region, b: Region): Region {
  return boxesMeet(regionBox(a), regionBox(b)) ? combined([a, b], inBoth) : [];
}

/** What lies in the region and in none of those taken from it. */
export function differenceOf(region: Region, taken: readonly Region[]): Region {
  const box = regionBox(region);
  return combined([region, ...taken.filter((other) => boxesMeet(box, regionBox(other)))], inFirstOnly);
}

/** Square metres; loops of a ring that crosses itself count as the even-odd rule has them. */
export function regionArea(region: Region): number {
  return areaOf(slabsOf(laid([region]).operands, inAny));
}

/** Square metres that lie in both. */
export function intersectionArea(a: Region, b: Region): number {
  if (!boxesMeet(regionBox(a), regionBox(b))) return 0;
  return areaOf(slabsOf(laid([a, b]).operands, inBoth));
}

function combined(operands: readonly Region[], holds: Holds): Region {
  const { operands: inFrame, back } = laid(operands);
  return back(outlineOfSlabs(slabsOf(inFrame, holds)));
}

/** Operands in the frame in which they are cut up, and the way back from it. */
type Laid = { readonly operands: readonly Region[]; readonly back: (region: Region) => Region };

/**
 * Moved so that one of their corners is the origin, which keeps what is far out as exact as what is near, and turned over when they
 * reach further east than north, so that few legs share a slab.
 */
function laid(operands: readonly Region[]): Laid {
  const box = regionBox(operands.flat());
  const origin = originOf(operands);
  const over = box.maxX - box.minX > box.maxY - box.minY;
  const into = over
    ? (p: Point) => ({ x: p.y - origin.y, y: p.x - origin.x })
    : (p: Point) => ({ x: p.x - origin.x, y: p.y - origin.y });
  const outOf = over
    ? (p: Point) => ({ x: p.y + origin.x, y: p.x + origin.y })
    : (p: Point) => ({ x: p.x + origin.x, y: p.y + origin.y });
  return {
    operands: operands.map((region) => region.map((ring) => ring.map(into))),
    back: (region) => region.map((ring) => (over ? ring.toReversed() : ring).map(outOf)),
  };
}

function originOf(regions: readonly Region[]): Point {
  for (const region of regions) for (const ring of region) for (const p of ring) return p;
  return { x: 0, y: 0 };
}

function areaOf(slabs: readonly Slab[]): number {
  let area = 0;
  for (const { low, high, spans } of slabs) {
    for (const { left, right } of spans) {
      const widths = sideAt(right, low) - sideAt(left, low) + sideAt(right, high) - sideAt(left, high);
      area += (widths / 2) * (high - low);
    }
  }
  return area;
}
