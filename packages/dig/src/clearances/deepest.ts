import {
  type Clearance,
  COINCIDENT_M,
  interpolate,
  nearestOnPolyline,
  type Point,
  pointInRing,
  pointToRing,
  polylineToRing,
} from '@footmark/geometry';
import type { ClearanceFace, DerivedFeature } from '@footmark/site';
import { deepestOnLeg } from './legDepth';
import type { Bounds } from './nearestLegs';
import type { Subject } from './subject';

/** `distance` (m) is negative; `from` on the subject's line, `at` on the feature's; half the subject's width (m) there, and its leg. */
export type Depth = Clearance & { readonly halfWidth: number; readonly leg: number };

/**
 * How deep one of two lies within the other: what of the feature is in the subject's ring, and what of the subject in the feature's
 * outline, whichever reaches in further. Null where neither is within by more than `COINCIDENT_M`.
 */
export function deepest(subject: Subject, feature: DerivedFeature, face: ClearanceFace): Depth | null {
  const inside = face === 'outline' ? inOutline(subject, feature) : null;
  const around = subject.ring === null ? null : inRing(subject.ring, feature);
  if (inside === null || around === null) return inside ?? around;
  return around.distance < inside.distance ? around : inside;
}

/** The deepest place of a feature in a dig. */
function inRing(ring: readonly Point[], { outline, spec }: DerivedFeature): Depth | null {
  const [first] = outline;
  if (first === undefined) return null;
  const line = spec.shape === 'area' ? [...outline, first] : outline;
  const { distance, from, at } =
    spec.shape === 'point' ? pointToRing(first, ring) : polylineToRing(line, ring);
  return distance < -COINCIDENT_M ? { distance, from: at, at: from, halfWidth: 0, leg: 0 } : null;
}

/** The deepest place of a subject in an outline, its half width counted. */
function inOutline({ table, points }: Subject, { outline, bounds }: DerivedFeature): Depth | null {
  const [only] = points;
  if (only !== undefined && points.length === 1) {
    if (pointInRing(only, outline) !== 'inside') return null;
    return { ...pointToRing(only, outline), halfWidth: 0, leg: 0 };
  }
  let found: { from: Point; halfWidth: number; leg: number } | null = null;
  let reach = 0;
  for (const [k, halfWidth] of table.halfWidths.entries()) {
    const end = table.starts[k + 1] ?? 0;
    for (let leg = table.starts[k] ?? 0; leg < end; leg++) {
      const [a, b] = [points[leg], points[leg + 1]];
      if (a === undefined || b === undefined || !meets(a, b, bounds)) continue;
      const depth = deepestOnLeg(a, b, outline, Math.max(COINCIDENT_M, reach - halfWidth));
      if (depth === null) continue;
      reach = Math.sqrt(depth.squared) + halfWidth;
      found = { from: interpolate(a, b, depth.share), halfWidth, leg };
    }
  }
  if (found === null) return null;
  const { point: at, distance } = nearestOnPolyline(found.from, outline, true);
  return { ...found, distance: -distance, at };
}

function meets(a: Point, b: Point, { minX, minY, maxX, maxY }: Bounds): boolean {
  return (
    Math.max(a.x, b.x) >= minX &&
    Math.min(a.x, b.x) <= maxX &&
    Math.max(a.y, b.y) >= minY &&
    Math.min(a.y, b.y) <= maxY
  );
}
