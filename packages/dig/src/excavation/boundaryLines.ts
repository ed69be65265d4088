import {
  distance,
  interpolate,
  nearestOnPolyline,
  type Point,
  pointInRing,
  type Region,
  ringArea,
  stretchesInRing,
} from '@footmark/geometry';
import { type DerivedFeature, type FeatureKind, settings } from '@footmark/site';

/** Two lines that were drawn for one lie no further apart than a point that was put there by eye may be off (m). */
const SAME_LINE_M = settings.assumedPointSigma.value;

/** A line is looked at this often (m). */
const STEP_M = 0.1;

/** What may be drawn for one line; that of the lot, which comes first, is told. */
export const boundaryLineKinds: readonly FeatureKind[] = ['boundary', 'boundary-line', 'right-of-way'];

/** Boundaries without those that run, as far as a region goes, along one that is kept: a lot's side and the right of way on it are one line. */
export function distinctBoundaries(
  boundaries: readonly DerivedFeature[],
  region: Region,
): readonly DerivedFeature[] {
  if (boundaries.length < 2) return boundaries;
  const kept: DerivedFeature[] = [];
  const rankOf = ({ feature }: DerivedFeature) => boundaryLineKinds.indexOf(feature.kind);
  for (const one of boundaries.toSorted((a, b) => rankOf(a) - rankOf(b))) {
    const inside = kept.length === 0 ? [] : placesInside(one, region);
    const isTold = kept.some((other) => inside.every((p) => isOn(other, p)));
    if (!isTold || inside.length === 0) kept.push(one);
  }
  return kept;
}

/** Every step, and where it enters and leaves. */
function placesInside({ outline, spec }: DerivedFeature, region: Region): readonly Point[] {
  const line = spec.shape === 'area' ? [...outline, ...outline.slice(0, 1)] : outline;
  const holes = region.filter((ring) => ringArea(ring) < 0);
  const outer = region.filter((ring) => ringArea(ring) > 0);
  return line.slice(1).flatMap((b, i) => {
    const a = line[i] ?? b;
    return outer
      .flatMap((ring) => stretchesInRing(a, b, ring))
      .flatMap(({ from, to }) => {
        const steps = Math.ceil(((to - from) * distance(a, b)) / STEP_M);
        return Array.from({ length: steps + 1 }, (_, k) =>
          interpolate(a, b, from + ((to - from) * k) / steps),
        );
      })
      .filter((p) => holes.every((hole) => pointInRing(p, hole) !== 'inside'));
  });
}

function isOn({ outline, spec }: DerivedFeature, p: Point): boolean {
  return nearestOnPolyline(p, outline, spec.shape === 'area').distance <= SAME_LINE_M;
}
