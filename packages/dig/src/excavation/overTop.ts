import {
  circleRegionArea,
  intersectionArea,
  lineInRegion,
  pointInRing,
  type Region,
  regionBox,
} from '@footmark/geometry';
import type { DerivedFeature, FeatureKind } from '@footmark/site';
import type { DigSeverity } from '../digFinding';
import type { Say } from './excavationFinding';
import { isNear, OVERLAP_M2, regionOf, type Surroundings } from './surroundings';

/** Lines that run through an outline for less than this (m) only touch it. */
const TOUCH_M = 0.001;

type ByLength = 'dig-crosses-boundary' | 'dig-crosses-service';
type ByArea = 'dig-in-easement' | 'dig-reaches-building' | 'dig-takes-pavement';
type Meeting = { readonly severity: DigSeverity } & (
  | { readonly by: 'length'; readonly code: ByLength }
  | { readonly by: 'area'; readonly code: ByArea }
  | { readonly by: 'touch' }
);

const boundary = { by: 'length', code: 'dig-crosses-boundary', severity: 'must' } as const;
const building = { by: 'area', code: 'dig-reaches-building', severity: 'must' } as const;
const pavement = { by: 'area', code: 'dig-takes-pavement', severity: 'note' } as const;
const thing = { by: 'touch', severity: 'should' } as const;

/** What is said of a dig that takes a piece of a thing; other kinds may be dug through, or belong to the drain. */
const MEETINGS: Partial<Record<FeatureKind, Meeting>> = {
  boundary,
  'boundary-line': boundary,
  'right-of-way': boundary,
  easement: { by: 'area', code: 'dig-in-easement', severity: 'should' },
  building,
  shed: building,
  porch: building,
  deck: building,
  street: pavement,
  sidewalk: pavement,
  driveway: pavement,
  patio: pavement,
  service: { by: 'length', code: 'dig-crosses-service', severity: 'must' },
  tree: thing,
  hedge: thing,
  curb: thing,
  fence: thing,
  'retaining-wall': thing,
  'septic-tank': thing,
  well: thing,
  pole: thing,
  hydrant: thing,
  meter: thing,
  benchmark: thing,
  'reference-point': thing,
};

/** Says of everything that the top outline of a dig runs over. */
export function sayOfTop(top: Region, around: Surroundings, say: Say): void {
  const box = regionBox(top);
  for (const derived of around.all) {
    const { kind, id } = derived.feature;
    const meeting = MEETINGS[kind];
    if (meeting === undefined || !isNear(derived, box)) continue;
    const about = { feature: id, kind };
    if (meeting.by === 'length') {
      const length = lineInRegion(derived.outline, derived.spec.shape === 'area', top);
      if (length > TOUCH_M) say(meeting.code, meeting.severity, { ...about, length });
    } else if (meeting.by === 'area') {
      const area = intersectionArea(top, regionOf(derived));
      if (area > OVERLAP_M2) say(meeting.code, meeting.severity, { ...about, area });
    } else if (isTaken(derived, top)) say('dig-takes-thing', meeting.severity, about);
  }
}

function isTaken(derived: DerivedFeature, top: Region): boolean {
  const { outline, points, radius, spec } = derived;
  const [place] = points;
  switch (spec.shape) {
    case 'area':
      return intersectionArea(top, regionOf(derived)) > OVERLAP_M2;
    case 'line':
      return lineInRegion(outline, false, top) > TOUCH_M;
    case 'point':
      if (place === undefined) return false;
      if (radius > 0) return circleRegionArea(place, radius, top) > OVERLAP_M2;
      return top.filter((ring) => pointInRing(place, ring) !== 'outside').length % 2 === 1;
  }
}
