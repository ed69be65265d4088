import { type Lot, lotsOf, type TreeZones, type TrenchReach, treeZones } from '@footmark/dig';
import { intersectSegments, type Point, pointInRing } from '@footmark/geometry';
import type { Shape } from '@footmark/route';
import {
  type Derived,
  type DerivedFeature,
  type FeatureKind,
  type RuleName,
  ruleValue,
  type Site,
} from '@footmark/site';

/** How a route treats a thing: keeps so far from its face (m), goes through so much dearer for each metre, or does not mind it. */
export type Treatment =
  | { readonly as: 'clear'; readonly clearance: number }
  | { readonly as: 'cost'; readonly perMetre: number }
  | { readonly as: 'free' };

/** A thing of the plan that a route may mind, as it usually does. */
export type Minded = {
  /** Of the feature; of a tree's roots `roots/` and its id; `beyond`: the land beyond the lot, whose first line is the feature. */
  readonly id: string;
  readonly feature: string;
  readonly shape: Shape;
  readonly usual: Treatment;
  readonly rule: RuleName;
};

/** Where a route begins and where it may end: what lies between is treated otherwise where it must be crossed. */
export type Ends = { readonly start: Point; readonly ends: readonly Point[] };

/** With its ends, how far (m) beyond the pipe's outside its trench reaches at the ground, and by which rule; null where that is not known. */
export type Setting = Ends & { readonly trench: TrenchReach | null };

type Usual =
  | { readonly as: 'clear'; readonly rule: RuleName }
  | { readonly as: 'cost'; readonly rule: RuleName; readonly beside?: RuleName };

/** By kind. A kind that is not here is not minded. */
const USUAL: Partial<Record<FeatureKind, Usual>> = {
  building: { as: 'clear', rule: 'building' },
  shed: { as: 'clear', rule: 'building' },
  porch: { as: 'clear', rule: 'building' },
  deck: { as: 'clear', rule: 'building' },
  well: { as: 'clear', rule: 'well' },
  'septic-tank': { as: 'clear', rule: 'otherService' },
  'retaining-wall': { as: 'clear', rule: 'otherService' },
  pole: { as: 'clear', rule: 'otherService' },
  hydrant: { as: 'clear', rule: 'otherService' },
  meter: { as: 'clear', rule: 'otherService' },
  manhole: { as: 'clear', rule: 'otherService' },
  boundary: { as: 'clear', rule: 'propertyLine' },
  'boundary-line': { as: 'clear', rule: 'propertyLine' },
  easement: { as: 'cost', rule: 'routeOtherLand' },
  street: { as: 'cost', rule: 'routePavement' },
  sidewalk: { as: 'cost', rule: 'routePavement' },
  driveway: { as: 'cost', rule: 'routePavement' },
  patio: { as: 'cost', rule: 'routePavement' },
  hedge: { as: 'cost', rule: 'routeRoots', beside: 'otherService' },
  service: { as: 'cost', rule: 'routeBesideService', beside: 'toleranceZone' },
  main: { as: 'cost', rule: 'routeBesideService', beside: 'toleranceZone' },
};

/** Half the width (m) in which going over a boundary counts: across it about as much as a metre of other land. */
const BOUNDARY_HALF_M = 0.5;

/** All that a route on a site minds, in the order of the site; roots after the things that they belong to. */
export function mindedOn(site: Site, derived: Derived, setting: Setting): readonly Minded[] {
  const zones = new Map(treeZones(site, derived).trees.map((t) => [t.tree, t]));
  const { own } = lotsOf(derived, []);
  const things = [...derived.features.values()].flatMap((f) => [
    ...thing(site, f, zones.get(f.feature.id), setting, own),
    ...roots(site, zones.get(f.feature.id)),
  ]);
  return own === null ? things : [...things, ...beyond(site, own, setting)];
}

/** How far (m) the land beyond a lot is taken to go on. */
const BEYOND_M = 200;

/** Where an end lies beyond the lot, all that is beyond costs; else the lot's own lines are kept clear of. */
function beyond(
  site: Site,
  { ring, features: [feature = ''] }: Lot,
  { start, ends }: Ends,
): readonly Minded[] {
  if (!isOutside(ring, start, ...ends)) return [];
  const [first] = ring;
  if (first === undefined) return [];
  const xs = ring.map((p) => p.x);
  const ys = ring.map((p) => p.y);
  const [left, right] = [Math.min(...xs) - BEYOND_M, Math.max(...xs) + BEYOND_M];
  const [low, high] = [Math.min(...ys) - BEYOND_M, Math.max(...ys) + BEYOND_M];
  const corner = { x: left, y: low };
  // a ring around the lot, with a slit to the lot's own ring
  const around = [corner, { x: right, y: low }, { x: right, y: high }, { x: left, y: high }, corner];
  const points = [...around, ...ring, first];
  const rule = 'routeOtherLand';
  const usual: Treatment = { as: 'cost', perMetre: ruleValue(site, rule) };
  return [{ id: 'beyond', feature, shape: { is: 'ring', points }, usual, rule }];
}

function isOutside(ring: readonly Point[], ...places: readonly Point[]): boolean {
  return places.some((p) => pointInRing(p, ring) === 'outside');
}

function thing(
  site: Site,
  of: DerivedFeature,
  tree: TreeZones | undefined,
  ends: Setting,
  own: Lot | null,
): readonly Minded[] {
  const { feature, spec } = of;
  const common = { id: feature.id, feature: feature.id };
  if (tree !== undefined) {
    // no side of the trench's bottom in the roots that hold it up
    const { radius, row: rule } = tree.held;
    const clearance = Math.max(0, radius + ruleValue(site, 'bottomWidth') / 2 - tree.diameter / 2);
    const shape: Shape = { is: 'circle', centre: tree.at, radius: tree.diameter / 2 };
    return [{ ...common, shape, usual: { as: 'clear', clearance }, rule }];
  }
  const [place] = of.points;
  if (feature.kind === 'tree' && place !== undefined) {
    // nobody knows how large it is
    const rule = 'routeTreeUnknown';
    const shape: Shape = { is: 'circle', centre: place, radius: 0 };
    return [{ ...common, shape, usual: { as: 'clear', clearance: ruleValue(site, rule) }, rule }];
  }
  const usual = usualOf(feature.kind, feature.fields);
  const shape = shapeOf(of);
  if (usual === undefined || shape === null) return [];
  // the land beyond costs, not its line
  if (own?.features.includes(feature.id) && isOutside(own.ring, ends.start, ...ends.ends)) return [];
  // what lies between the ends is gone over
  if (usual.as === 'clear' && (isBoundary(feature.kind) || spec.shape === 'line') && liesBetween(of, ends)) {
    const rule = isBoundary(feature.kind) ? 'routeOtherLand' : 'routeBesideService';
    return [{ ...common, shape: edgeOf(of), usual: { as: 'cost', perMetre: ruleValue(site, rule) }, rule }];
  }
  if (usual.as === 'clear') {
    const asked = { clearance: ruleValue(site, usual.rule), rule: usual.rule };
    if (!isBoundary(feature.kind))
      return [{ ...common, shape, usual: { as: 'clear', clearance: asked.clearance }, rule: asked.rule }];
    // its trench stays on the lot, too
    const { trench } = ends;
    const wide = trench !== null && trench.reach > asked.clearance;
    const clearance = wide ? trench.reach : asked.clearance;
    const rule = (wide ? trench.row : null) ?? asked.rule;
    return [{ ...common, shape: { ...edgeOf(of), halfWidth: 0 }, usual: { as: 'clear', clearance }, rule }];
  }
  const beside = usual.beside === undefined ? 0 : ruleValue(site, usual.beside);
  return [
    {
      ...common,
      shape: shape.is === 'line' ? { ...shape, halfWidth: shape.halfWidth + beside } : shape,
      usual: { as: 'cost', perMetre: ruleValue(site, usual.rule) },
      rule: usual.rule,
    },
  ];
}

function usualOf(kind: FeatureKind, fields: DerivedFeature['feature']['fields']): Usual | undefined {
  if (kind === 'service' && 'carries' in fields && fields.carries === 'water')
    return { as: 'cost', rule: 'routeBesideWater', beside: 'waterService' };
  return USUAL[kind];
}

function roots(site: Site, tree: TreeZones | undefined): readonly Minded[] {
  if (tree === undefined) return [];
  return [
    {
      id: `roots/${tree.tree}`,
      feature: tree.tree,
      shape: { is: 'circle', centre: tree.at, radius: tree.chosen.radius },
      usual: { as: 'cost', perMetre: ruleValue(site, 'routeRoots') },
      rule: 'routeRoots',
    },
  ];
}

function shapeOf({ feature, spec, points, outline, radius }: DerivedFeature): Shape | null {
  const [at] = points;
  if (spec.shape === 'area') return { is: 'ring', points: outline };
  if (spec.shape === 'point') return at === undefined ? null : { is: 'circle', centre: at, radius };
  const across = 'diameter' in feature.fields ? (feature.fields.diameter ?? 0) : 0;
  return { is: 'line', points: outline, halfWidth: across / 2 };
}

function edgeOf({ spec, outline }: DerivedFeature): Extract<Shape, { is: 'line' }> {
  const points = spec.shape === 'area' ? [...outline, ...outline.slice(0, 1)] : outline;
  return { is: 'line', points, halfWidth: BOUNDARY_HALF_M };
}

function isBoundary(kind: FeatureKind): boolean {
  return kind === 'boundary' || kind === 'boundary-line';
}

/** Whether the start lies within a lot and an end does not, or the other way round, or a boundary line is passed on the straight way to an end. */
function liesBetween({ spec, outline }: DerivedFeature, { start, ends }: Ends): boolean {
  if (spec.shape === 'area') {
    const isOut = pointInRing(start, outline) === 'outside';
    return ends.some((end) => (pointInRing(end, outline) === 'outside') !== isOut);
  }
  return ends.some((end) => timesPassed(outline, start, end) % 2 === 1);
}

function timesPassed(line: readonly Point[], start: Point, end: Point): number {
  return line.filter((a, i) => {
    const b = line[i + 1];
    return b !== undefined && intersectSegments(start, end, a, b, 'included').kind !== 'none';
  }).length;
}
