import { type Bounds, boundsOf, type Label } from '@footmark/drawing';
import { distance, type Point } from '@footmark/geometry';
import type { Units } from '@footmark/site';
import { mmPerMetreOf, ruledScales } from './scales';

/** A piece of plan drawn again larger, because painted points crowd there. Its middle in the turned plan (m), its size on paper (mm). */
export type Detail = Readonly<{ letter: string; middle: Point; denominator: number; size: Size }>;

type Size = Readonly<{ width: number; height: number }>;

/** Of a detail on paper, mm: low for a few points, high for what stands above each other. */
const HEIGHTS_MM = [62, 100] as const;
/** Room (mm) for texts about the points of a detail. */
const AIR_MM = 12;
/** Points without a text that are nearer than this (mm of the plan) belong to one crowd. */
const TOGETHER_MM = 10;
/** A detail is this many times larger than the plan at least: crowds are told apart by it. */
const LARGER = 3;

/**
 * The details that points which found no room for their text ask for, lettered on from `before` that are there already: as few as hold each
 * crowd, each at the largest scale of a rule. `widths`: mm that a detail may have, the narrowest first.
 */
export function detailsFor(
  missing: readonly Label[],
  denominator: number,
  units: Units,
  { widths, before }: Readonly<{ widths: readonly number[]; before: number }>,
): readonly Detail[] {
  const sizes = widths.flatMap((width) => HEIGHTS_MM.map((height) => ({ width, height })));
  const near = TOGETHER_MM / mmPerMetreOf(denominator);
  const details: Detail[] = [];
  let left = missing.map((label) => label.at);
  while (left.length > 0) {
    const [first, ...others] = left;
    if (first === undefined) break;
    const crowd = inOrder(crowdOf(first, others, near));
    const found = grown(crowd, (points) => smallest(points, sizes, denominator, units));
    if (found === null) {
      left = others;
      continue;
    }
    const detail = { letter: letterOf(before + details.length), ...found };
    details.push(detail);
    left = left.filter((p) => !isInDetail(p, detail));
  }
  return details;
}

/** All points that lie near one of the crowd, one leading to the next. */
function crowdOf(first: Point, points: readonly Point[], near: number): readonly Point[] {
  const crowd = [first];
  let left = points;
  for (const member of crowd) {
    const close = left.filter((p) => distance(p, member) < near);
    left = left.filter((p) => !close.includes(p));
    crowd.push(...close);
  }
  return crowd;
}

/** Along the longer side of what they take. */
function inOrder(points: readonly Point[]): readonly Point[] {
  const bounds = boundsOf(points);
  const lies = bounds !== null && bounds.maxX - bounds.minX > bounds.maxY - bounds.minY;
  return points.toSorted((a, b) => (lies ? a.x - b.x : b.y - a.y));
}

/** The detail of as many points of a crowd, from its first on, as one can hold. */
function grown<Found>(
  crowd: readonly Point[],
  fit: (points: readonly Point[]) => Found | null,
): Found | null {
  for (let count = crowd.length; count > 0; count -= 1) {
    const found = fit(crowd.slice(0, count));
    if (found !== null) return found;
  }
  return null;
}

/** The smallest size that holds points at a scale that is worth it, at the largest such scale, about their middle. */
function smallest(points: readonly Point[], sizes: readonly Size[], denominator: number, units: Units) {
  const bounds = boundsOf(points);
  if (bounds === null) return null;
  for (const size of sizes) {
    const scale = scaleFor(bounds, size, units);
    if (scale === null || scale * LARGER > denominator) continue;
    const middle = { x: (bounds.minX + bounds.maxX) / 2, y: (bounds.minY + bounds.maxY) / 2 };
    return { middle, denominator: scale, size };
  }
  return null;
}

function scaleFor({ minX, minY, maxX, maxY }: Bounds, { width, height }: Size, units: Units): number | null {
  const [wide, high] = [width - 2 * AIR_MM, height - 2 * AIR_MM];
  const fits = (d: number) =>
    (maxX - minX) * mmPerMetreOf(d) <= wide && (maxY - minY) * mmPerMetreOf(d) <= high;
  return ruledScales(units).find(fits) ?? null;
}

function letterOf(number: number): string {
  return String.fromCharCode('A'.charCodeAt(0) + (number % 26)).repeat(1 + Math.floor(number / 26));
}

/** What of the plan (m) a detail shows. */
export function detailBounds({ middle, denominator, size }: Detail): Bounds {
  const k = mmPerMetreOf(denominator);
  const [halfX, halfY] = [size.width / 2 / k, size.height / 2 / k];
  return { minX: middle.x - halfX, minY: middle.y - halfY, maxX: middle.x + halfX, maxY: middle.y + halfY };
}

export function isInDetail({ x, y }: Point, detail: Detail): boolean {
  const { minX, minY, maxX, maxY } = detailBounds(detail);
  return x >= minX && x <= maxX && y >= minY && y <= maxY;
}
