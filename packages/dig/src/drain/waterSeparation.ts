import type { Point } from '@footmark/geometry';
import {
  type Derived,
  type DerivedFeature,
  type DerivedPath,
  type FeatureOf,
  type PathProfile,
  type RuleName,
  ruleValue,
  type Site,
  WITHIN_95,
} from '@footmark/site';
import { edgeDistance } from '../clearances/edgeDistance';
import type { Subject } from '../clearances/subject';
import type { WaterUnknown } from './drainFinding';
import { waterAbove } from './waterAbove';

/**
 * Of a water pipe and a sewer. `by-exception`: nearer in plan than is asked, and as far in height as then is asked; `cannot-tell`: nearer,
 * and what would decide is `missing`.
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
  /** The 95 % range of the height leaves the verdict as it is. */
  readonly sure: boolean;
  readonly missing: readonly WaterUnknown[];
};

/** Lengths are equal within this (m). */
const SAME_M = 1e-6;

const isWater = (f: DerivedFeature): f is DerivedFeature & { readonly feature: FeatureOf<'service'> } =>
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
  water: DerivedFeature & { readonly feature: FeatureOf<'service'> },
  on: DerivedPath,
  subject: Subject,
  profile: PathProfile,
): WaterSeparation | null {
  const { diameter } = water.feature.fields;
  const mainSize = ruleValue(site, 'waterMainDiameter');
  const isMain = (diameter ?? 0) >= mainSize - SAME_M;
  const rule = isMain ? 'waterMain' : 'waterService';
  const aboveRule = isMain ? 'waterMainCrossing' : 'waterAbove';
  const [asked, aboveAsked] = [ruleValue(site, rule), ruleValue(site, aboveRule)];
  const reach = Math.max(asked, ruleValue(site, 'nearby'));
  const edge = edgeDistance(subject, water, 'line', (diameter ?? 0) / 2, reach);
  if (edge === null) return null;
  const { distance, from, at, station, meets: crosses } = edge;
  const plan = {
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
  } as const;
  // of a size that nobody gave, the outside may be this much nearer than the middle
  const unsaid = diameter === undefined ? mainSize : 0;
  if (distance - unsaid / 2 >= asked - SAME_M)
    return { ...plan, above: null, sigma: 0, verdict: 'meets', sure: true, missing: [] };

  const height = waterAbove(profile, on, water, asked, plan.station);
  const { sigma, missing } = height;
  if (height.top === null) {
    const unsized = distance >= asked - SAME_M ? (['service-diameter'] as const) : [];
    return {
      ...plan,
      above: null,
      sigma,
      verdict: 'cannot-tell',
      sure: false,
      missing: [...missing, ...unsized],
    };
  }
  const above = height.top - (diameter ?? 0);
  const below = isMain && crosses ? (height.bottom ?? -Infinity) : -Infinity;
  const judge = (gap: number) => Math.max(gap, below) >= aboveAsked - SAME_M;
  const [least, most] = [judge(above - unsaid), judge(above)];
  const judged = { ...plan, above, sigma };
  if (least !== most || (distance >= asked - SAME_M && !least))
    return { ...judged, verdict: 'cannot-tell', sure: false, missing: ['service-diameter'] };
  const sure = Math.abs(Math.max(above, below) - aboveAsked) >= WITHIN_95 * sigma;
  return { ...judged, verdict: least ? 'by-exception' : 'misses', sure, missing: [] };
}
