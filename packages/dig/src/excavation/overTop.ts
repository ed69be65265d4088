import {
  circleRegionArea,
  intersectionArea,
  lineInRegion,
  pointInRing,
  type Region,
  regionBox,
  unionOf,
} from '@footmark/geometry';
import type { DerivedFeature, FeatureKind } from '@footmark/site';
import type { DigSeverity } from '../digFinding';
import { distinctBoundaries } from './boundaryLines';
import { type Cut, outlineAt } from './cut';
import type { Excavation } from './excavation';
import type { Say } from './excavationFinding';
import { isNear, OVERLAP_M2, regionOf, type Surroundings } from './surroundings';

/** Lines that run through an outline for less than this (m) only touch it. */
const TOUCH_M = 0.001;

type ByArea = 'dig-in-easement' | 'dig-reaches-building' | 'dig-takes-pavement';
type Meeting = { readonly severity: DigSeverity } & (
  | { readonly by: 'length'; readonly code: 'dig-crosses-boundary' }
  | { readonly by: 'depth'; readonly code: 'dig-crosses-service' }
  | { readonly by: 'area'; readonly code: ByArea }
  | { readonly by: 'touch'; readonly code: 'dig-takes-thing' | 'dig-takes-trunk' }
);

const boundary = { by: 'length', code: 'dig-crosses-boundary', severity: 'must' } as const;
const building = { by: 'area', code: 'dig-reaches-building', severity: 'must' } as const;
const pavement = { by: 'area', code: 'dig-takes-pavement', severity: 'note' } as const;
const thing = { by: 'touch', code: 'dig-takes-thing', severity: 'should' } as const;

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
  service: { by: 'depth', code: 'dig-crosses-service', severity: 'must' },
  tree: { by: 'touch', code: 'dig-takes-trunk', severity: 'must' },
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

/** A dig over things: the ground that it takes, and its pieces whose depth is known. */
type Over = { readonly ground: NonNullable<Excavation['ground']>; readonly cuts: readonly Cut[] };

/** Says of everything that a dig takes a piece of: of services what is laid bare by its depth, of all else what its top runs over. */
export function sayOfTop({ ground, cuts }: Over, around: Surroundings, say: Say): void {
  const { outline: top, atLeast } = ground;
  const box = regionBox(top);
  const near = around.all.filter((derived) => isNear(derived, box));
  // two lines are held against each other only where something is to be said of one
  const lines = near.some(isLine) ? around.lines.filter((derived) => isNear(derived, box)) : [];
  const told = new Set(distinctBoundaries(lines, top));
  for (const derived of near) {
    const { kind, id } = derived.feature;
    const meeting = MEETINGS[kind];
    if (meeting === undefined || (meeting.by === 'length' && !told.has(derived))) continue;
    const about = { feature: id, kind, atLeast };
    if (meeting.by === 'length') {
      const length = lineInRegion(derived.outline, derived.spec.shape === 'area', top);
      if (length > TOUCH_M) say(meeting.code, meeting.severity, { ...about, length });
    } else if (meeting.by === 'area') {
      const area = intersectionArea(top, regionOf(derived));
      if (area > OVERLAP_M2) say(meeting.code, meeting.severity, { ...about, area });
    } else if (meeting.by === 'depth') {
      const bare = laidBare(derived, ground, cuts);
      if (bare !== null && bare.length > TOUCH_M) say(meeting.code, meeting.severity, { ...about, ...bare });
    } else if (isTaken(derived, top)) say(meeting.code, meeting.severity, about);
  }
}

function isLine({ feature }: DerivedFeature): boolean {
  return MEETINGS[feature.kind]?.by === 'length';
}

type LaidBare = { readonly length: number; readonly unknown: 'service' | 'dig' | null };

/**
 * Metres of a service that a dig goes below the top of; where one of the two depths is not known, metres that run through its ground and
 * may be laid bare. Null where it stays below the bottom: that it is in the tolerance zone is said with the services.
 */
function laidBare(service: DerivedFeature, { outline, atLeast }: Over['ground'], cuts: Over['cuts']) {
  const within = (region: Region) => lineInRegion(service.outline, false, region);
  const depth = service.feature.kind === 'service' ? service.feature.fields.depth : undefined;
  const met = within(outline);
  if (depth === undefined) return { length: met, unknown: 'service' } satisfies LaidBare;
  const length = within(unionOf(cuts.map((cut) => outlineAt(cut, depth))));
  if (length > TOUCH_M) return { length, unknown: null } satisfies LaidBare;
  return atLeast ? ({ length: met, unknown: 'dig' } satisfies LaidBare) : null;
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
