import type { Point } from '@footmark/geometry';
import {
  type Derived,
  type DerivedFeature,
  type DerivedPath,
  type FeatureOf,
  type PathProfile,
  type PipeMaterial,
  type RuleName,
  ruleValue,
  type Site,
  WITHIN_95,
  waterOverOf,
} from '@footmark/site';
import { isWaterMain } from '../clearances/clearanceRule';
import { edgeDistance } from '../clearances/edgeDistance';
import type { Subject } from '../clearances/subject';
import type { WaterUnknown } from './drainFinding';
import { SAME_M } from './openings';
import { type WaterAbove, waterAbove } from './waterAbove';

/**
 * Of a water pipe and a sewer. `by-exception`: nearer in plan than is asked, and allowed by height or by the sewer's material;
 * `cannot-tell`: nearer, and what would decide is `missing`.
 */
export type WaterVerdict = 'meets' | 'by-exception' | 'misses' | 'cannot-tell';

export type WaterSeparation = {
  readonly service: string;
  /** Of a size that is taken for a main. */
  readonly isMain: boolean;
  readonly crosses: boolean;
  /** Edge to edge in plan (m), less than nothing where one crosses the other, and where: on the sewer, on the water pipe, along the path. */
  readonly distance: number;
  readonly from: Point;
  readonly at: Point;
  readonly station: number;
  readonly rule: RuleName;
  readonly asked: number;
  /** From the sewer's top up to the water's bottom (m): the least where they are nearer than `asked`; null where that is not known or not asked. */
  readonly above: number | null;
  readonly sigma: number;
  readonly aboveRule: RuleName;
  readonly aboveAsked: number;
  readonly verdict: WaterVerdict;
  /** What allows it; null where it is not nearer than asked, or not allowed. */
  readonly by: 'height' | 'material' | null;
  /** The 95 % range of the height leaves the verdict as it is. */
  readonly sure: boolean;
  readonly missing: readonly WaterUnknown[];
};

/**
 * Materials that may lie in the ground under a building (IPC Table 702.2, from memory: ABS, PVC and other plastics, cast iron, copper;
 * clay and concrete are sewer pipe only); of null nobody can tell.
 */
const LISTED: Record<PipeMaterial, boolean | null> = {
  plastic: true,
  'cast-iron': true,
  clay: false,
  concrete: false,
  'bituminised-fibre': false,
  other: null,
  unknown: null,
};

type Water = DerivedFeature & { readonly feature: FeatureOf<'service'> };

/** What the plan tells. */
type Plan = Omit<WaterSeparation, 'above' | 'sigma' | 'verdict' | 'by' | 'sure' | 'missing'>;

const isWater = (f: DerivedFeature): f is Water =>
  f.feature.kind === 'service' && f.feature.fields.carries === 'water';

/** Between a path and every water pipe that is near enough to be listed, the nearest first. */
export function waterSeparations(
  site: Site,
  derived: Pick<Derived, 'features'>,
  on: DerivedPath,
  subject: Subject,
  profile: PathProfile,
): readonly WaterSeparation[] {
  const found: WaterSeparation[] = [];
  for (const feature of derived.features.values()) {
    const one = isWater(feature) ? waterSeparation(site, feature, on, subject, profile) : null;
    if (one !== null) found.push(one);
  }
  return found.sort((a, b) => a.distance - b.distance);
}

function waterSeparation(
  site: Site,
  water: Water,
  on: DerivedPath,
  subject: Subject,
  profile: PathProfile,
): WaterSeparation | null {
  const { diameter } = water.feature.fields;
  const mainSize = ruleValue(site, 'waterMainDiameter');
  const isMain = isWaterMain(diameter, mainSize);
  const rule = isMain ? 'waterMain' : 'waterService';
  const aboveRule = isMain ? 'waterMainCrossing' : waterOverOf(site);
  const [asked, aboveAsked] = [ruleValue(site, rule), ruleValue(site, aboveRule)];
  const reach = Math.max(asked, ruleValue(site, 'nearby'));
  const edge = edgeDistance(subject, water, 'line', (diameter ?? 0) / 2, reach);
  if (edge === null) return null;
  const { distance, from, at, station, meets: crosses } = edge;
  const plan: Plan = {
    service: water.feature.id,
    isMain,
    crosses,
    distance,
    from,
    at,
    station: station ?? 0,
    rule,
    asked,
    aboveRule,
    aboveAsked,
  };
  // of a size that nobody gave, the outside may be this much nearer than the middle
  const unsaid = diameter === undefined ? mainSize : 0;
  if (distance - unsaid / 2 >= asked - SAME_M)
    return { ...plan, above: null, sigma: 0, verdict: 'meets', by: null, sure: true, missing: [] };

  const height = waterAbove(profile, on, water, asked, plan.station);
  return byMaterial(site, plan, height, byHeight(plan, height, diameter ?? 0, unsaid), unsaid);
}

/** What the heights make of it, whatever the sewer is made of. */
function byHeight(plan: Plan, height: WaterAbove, diameter: number, unsaid: number): WaterSeparation {
  const { distance, asked, aboveAsked, isMain, crosses } = plan;
  const { sigma, missing } = height;
  if (height.top === null) {
    const unsized = unsaid > 0 && distance >= asked - SAME_M ? (['service-diameter'] as const) : [];
    const open = {
      verdict: 'cannot-tell',
      by: null,
      sure: false,
      missing: [...missing, ...unsized],
    } as const;
    return { ...plan, above: null, sigma, ...open };
  }
  const above = height.top - diameter;
  const below = isMain && crosses ? (height.bottom ?? -Infinity) : -Infinity;
  const judge = (gap: number) => Math.max(gap, below) >= aboveAsked - SAME_M;
  const [least, most] = [judge(above - unsaid), judge(above)];
  const judged = { ...plan, above, sigma };
  if (least !== most || (distance >= asked - SAME_M && !least))
    return { ...judged, verdict: 'cannot-tell', by: null, sure: false, missing: ['service-diameter'] };
  const sure = Math.abs(Math.max(above, below) - aboveAsked) >= WITHIN_95 * sigma;
  const told = least
    ? ({ verdict: 'by-exception', by: 'height' } as const)
    : ({ verdict: 'misses', by: null } as const);
  return { ...judged, ...told, sure, missing: [] };
}

/**
 * A sewer of a listed material need not keep so far from a water service, mains apart: not at all from one that crosses it. What heights
 * surely allow stays allowed by them.
 */
function byMaterial(
  site: Site,
  plan: Plan,
  height: WaterAbove,
  told: WaterSeparation,
  unsaid: number,
): WaterSeparation {
  if (plan.isMain || (told.verdict === 'by-exception' && told.sure)) return told;
  const listed = height.materials.map((m) => LISTED[m]);
  if (listed.length === 0 || listed.includes(false)) return told;
  const asked = ruleValue(site, 'waterListed');
  const isFar = (distance: number) => plan.crosses || distance >= asked - SAME_M;
  const isSurelyFar = isFar(plan.distance - unsaid / 2);
  const isKnown = !listed.includes(null);
  const ruled = isKnown ? ({ ...told, rule: 'waterListed', asked } as const) : told;
  if (isSurelyFar && isKnown)
    return { ...ruled, verdict: 'by-exception', by: 'material', sure: true, missing: [] };
  if (!isFar(plan.distance) || told.verdict === 'by-exception') return ruled;
  const missing = new Set(told.missing);
  if (!isSurelyFar) missing.add('service-diameter');
  if (!isKnown) missing.add('pipe-material');
  return { ...ruled, verdict: 'cannot-tell', by: null, sure: false, missing: [...missing] };
}
