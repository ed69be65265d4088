import { intersectionArea, polylineToRing, type Region } from '@footmark/geometry';
import { type FeatureOf, type RuleName, ruleValue, type Site } from '@footmark/site';
import { type CutPoint, grownCut } from './cut';
import type { Sides } from './excavation';
import type { Say } from './excavationFinding';
import { OVERLAP_M2, regionOf, type Surroundings } from './surroundings';

type Foundation = NonNullable<FeatureOf<'building'>['fields']['foundation']>;

const ROWS = {
  basement: 'footingBasement',
  'crawl-space': 'footingCrawlSpace',
  slab: 'footingSlab',
  piers: 'footingPiers',
} as const satisfies Record<Foundation, RuleName>;

/** How deep a footing's bottom is (m), and what that follows from where nobody gave it. */
export type Footing = { readonly depth: number; readonly assumed: 'foundation' | 'nothing' | null };

/** Of a building of which nothing is known the shallowest is taken, which is the first that a dig undermines. */
export function footingOf(site: Site, { fields }: FeatureOf<'building'>): Footing {
  if (fields.footingDepth !== undefined) return { depth: fields.footingDepth, assumed: null };
  const { foundation } = fields;
  return {
    depth: ruleValue(site, foundation === undefined ? 'footingSlab' : ROWS[foundation]),
    assumed: foundation === undefined ? 'nothing' : 'foundation',
  };
}

/**
 * Says of buildings that a dig undermines: from the bottom of a footing the ground that bears it spreads outwards going down, as flat as
 * the rule of thumb has it. A face that is cut back flatter than that meets the footing's own depth first.
 *
 *      building │            \         / ground
 *      footing  ▙ . . . . . . .\. . . /
 *                 `. influence   \   /
 *                    `.            ─  bottom of the dig
 */
export function sayOfFootings(
  site: Site,
  dig: {
    readonly points: readonly CutPoint[];
    readonly width: number;
    readonly sides: Sides;
    readonly bottom: Region;
  },
  around: Surroundings,
  say: Say,
): void {
  const flattest = Math.max(ruleValue(site, 'footingInfluence'), dig.sides.slope);
  const deepest = Math.max(...dig.points.map((p) => p.depth));
  const [ring = []] = dig.bottom;
  const [corner] = ring;
  if (corner === undefined) return;
  for (const derived of around.buildings) {
    const { feature } = derived;
    if (feature.kind !== 'building') continue;
    const footing = footingOf(site, feature);
    if (deepest <= footing.depth) continue;
    const reached = grownCut(dig, (depth) => flattest * Math.max(0, depth - footing.depth));
    if (intersectionArea(reached, regionOf(derived)) <= OVERLAP_M2) continue;
    const nearest = polylineToRing([...ring, corner], derived.outline);
    say(
      'dig-under-footing',
      'must',
      {
        feature: feature.id,
        kind: feature.kind,
        depth: deepest,
        footing: footing.depth,
        distance: nearest.distance,
        reach: flattest * (deepest - footing.depth),
        assumed: footing.assumed,
      },
      { rule: 'footingInfluence', place: nearest.at },
    );
  }
}
