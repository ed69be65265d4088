import { type Point, pointInRing, pointToRing } from '@footmark/geometry';
import type { Derived, FeatureKind, FeatureOf, Site } from '@footmark/site';
import { requiredOn, toleranceZone } from './clearances/clearanceRule';
import { clearancesFrom } from './clearances/clearances';
import { featureIndex } from './clearances/featureIndex';
import { outlineSubject } from './clearances/subject';
import { type TreeZones, treeZones } from './trees/treeZones';

/** A hole that a crew is going to dig by hand or machine: about a place, along the pipe and across it (m). */
export type CrewHole = {
  readonly at: Point;
  /** Azimuth (rad) of the pipe there. */
  readonly along: number;
  readonly length: number;
  readonly width: number;
};

/**
 * What a hole may hit. `service`: a line of others, `byHand` when the hole reaches into its tolerance zone, `depth` to its top where that is known; `roots`:
 * of a tree whose zone it reaches into; `footing`: of what stands so near. `distance` (m) from the hole's edge, negative where it lies in the hole.
 */
export type Danger = {
  readonly is: 'service' | 'roots' | 'footing';
  readonly feature: string;
  readonly distance: number;
  /** Where it is nearest. */
  readonly at: Point;
  readonly byHand: boolean;
  readonly depth: number | null;
};

/** What bears on the ground beside a hole. */
const BEARING: ReadonlySet<FeatureKind> = new Set(['building', 'shed', 'porch', 'deck', 'retaining-wall']);

/** Services this far (m) past the tolerance zone are told all the same: where they lie is not sure. */
const BESIDE_ZONE_M = 0.6;

/** A footing further off (m) than a hole is commonly deep is not undermined by it (down and out, 45 degrees; common practice, no source). */
const FOOTING_M = 1.5;

const RANK: Record<Danger['is'], number> = { service: 0, roots: 1, footing: 2 };

/** What a hole may hit: services first, then roots, then footings; of each the nearest first. */
export function dangersAt(site: Site, derived: Derived, hole: CrewHole): readonly Danger[] {
  const ring = ringOf(hole);
  const zone = toleranceZone(site);
  const subject = outlineSubject({ id: '', ring, depth: null, along: null });
  if (subject === null) return [];
  const reach = Math.max(zone + BESIDE_ZONE_M, FOOTING_M);
  const near = clearancesFrom(subject, featureIndex(derived.features.values()), requiredOn(site), reach);
  const zones = treeZones(site, derived).trees;
  const found = near.flatMap(({ feature, kind, distance: away, at }): Danger[] => {
    // of a tree that nobody measured no zone is known: it is told by its trunk
    if (kind === 'tree' && !zones.some(({ tree }) => tree === feature))
      return [{ is: 'roots', feature, distance: away, at, byHand: false, depth: null }];
    if (kind === 'service' || kind === 'main') {
      if (away > zone + BESIDE_ZONE_M) return [];
      return [
        { is: 'service', feature, distance: away, at, byHand: away < zone, depth: depthOf(derived, feature) },
      ];
    }
    if (!BEARING.has(kind) || away > FOOTING_M) return [];
    return [{ is: 'footing', feature, distance: away, at, byHand: false, depth: null }];
  });
  return [...found, ...rootsIn(zones, ring)].sort(
    (a, b) => RANK[a.is] - RANK[b.is] || a.distance - b.distance,
  );
}

function ringOf({ at, along, length, width }: CrewHole): readonly Point[] {
  const ahead = { x: (Math.sin(along) * length) / 2, y: (Math.cos(along) * length) / 2 };
  const right = { x: (Math.cos(along) * width) / 2, y: (-Math.sin(along) * width) / 2 };
  return [
    { x: at.x - ahead.x - right.x, y: at.y - ahead.y - right.y },
    { x: at.x + ahead.x - right.x, y: at.y + ahead.y - right.y },
    { x: at.x + ahead.x + right.x, y: at.y + ahead.y + right.y },
    { x: at.x - ahead.x + right.x, y: at.y - ahead.y + right.y },
  ];
}

function depthOf({ features }: Derived, id: string): number | null {
  const feature = features.get(id)?.feature as FeatureOf<'service' | 'main'> | undefined; // asked of these two kinds alone
  return feature?.fields.depth ?? null;
}

/** Trees whose root zone, by the rule of the site, the hole reaches into. */
function rootsIn(trees: readonly TreeZones[], ring: readonly Point[]): readonly Danger[] {
  return trees.flatMap(({ tree, at, chosen }): Danger[] => {
    const inside = pointInRing(at, ring) !== 'outside';
    const away = (inside ? 0 : pointToRing(at, ring).distance) - chosen.radius;
    return away >= 0 ? [] : [{ is: 'roots', feature: tree, distance: away, at, byHand: false, depth: null }];
  });
}
