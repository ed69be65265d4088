import {
  add,
  distance,
  nearestOnPolyline,
  type Point,
  pointInRing,
  type Region,
  scale,
  subtract,
} from '@footmark/geometry';
import { type DerivedFeature, type FeatureKind, settings } from '@footmark/site';

/** Two lines that were drawn for one lie no further apart than a point that was put there by eye may be off (m). */
const SAME_LINE_M = settings.assumedPointSigma.value;

/** A line is looked at this often (m). */
const STEP_M = 0.1;

/** Of two lines drawn for one that of the lot is told. */
const FIRST: readonly FeatureKind[] = ['boundary', 'boundary-line', 'right-of-way'];

/** Boundaries without those that run, as far as a region goes, along one that is kept: a lot's side and the right of way on it are one line. */
export function distinctBoundaries(
  boundaries: readonly DerivedFeature[],
  region: Region,
): readonly DerivedFeature[] {
  const kept: DerivedFeature[] = [];
  const ranked = boundaries.toSorted((a, b) => FIRST.indexOf(a.feature.kind) - FIRST.indexOf(b.feature.kind));
  for (const one of ranked) {
    const inside = placesInside(one, region);
    const isTold = kept.some((other) => inside.every((p) => isOn(other, p)));
    if (!isTold || inside.length === 0) kept.push(one);
  }
  return kept;
}

function placesInside({ outline, spec }: DerivedFeature, region: Region): readonly Point[] {
  const line = spec.shape === 'area' ? [...outline, ...outline.slice(0, 1)] : outline;
  return line.slice(1).flatMap((to, i) => {
    const from = line[i] ?? to;
    const steps = Math.max(1, Math.ceil(distance(from, to) / STEP_M));
    const places = Array.from({ length: steps + 1 }, (_, k) =>
      add(from, scale(subtract(to, from), k / steps)),
    );
    return places.filter((p) => region.filter((ring) => pointInRing(p, ring) !== 'outside').length % 2 === 1);
  });
}

function isOn({ outline, spec }: DerivedFeature, p: Point): boolean {
  return nearestOnPolyline(p, outline, spec.shape === 'area').distance <= SAME_LINE_M;
}
