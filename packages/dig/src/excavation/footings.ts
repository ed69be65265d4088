import { intersectionArea, polylineToRing, type Region } from '@footmark/geometry';
import { type FeatureOf, type RuleName, ruleValue, type Site } from '@footmark/site';
import { type Cut, type CutSides, cutBack, grownCut } from './cut';
import type { ExcavationFindingValues, Say } from './excavationFinding';
import { OVERLAP_M2, regionOf, type Standing, type Surroundings } from './surroundings';

type Foundation = NonNullable<FeatureOf<'building'>['fields']['foundation']>;

const ROWS = {
  basement: 'footingBasement',
  'crawl-space': 'footingCrawlSpace',
  slab: 'footingSlab',
  piers: 'footingPiers',
} as const satisfies Record<Foundation, RuleName>;

/** The shallowest of the table. */
const SHALLOWEST = 'footingSlab' satisfies RuleName;

/** How deep a footing's bottom is (m); the row that it is taken from where nobody gave it, and what that follows from. */
export type Footing = {
  readonly depth: number;
  readonly row: RuleName | null;
  readonly assumed: 'foundation' | 'nothing' | null;
};

/** Of a building of which nothing is known the shallowest is taken, which is the first that a dig undermines. */
export function footingOf(site: Site, feature: Standing): Footing {
  const fields: FeatureOf<'building'>['fields'] = feature.kind === 'building' ? feature.fields : {};
  const { footingDepth, foundation } = fields;
  if (footingDepth !== undefined) return { depth: footingDepth, row: null, assumed: null };
  const row = foundation === undefined ? SHALLOWEST : ROWS[foundation];
  return { depth: ruleValue(site, row), row, assumed: foundation === undefined ? 'nothing' : 'foundation' };
}

/** How far off a footing (m) the bottom of a dig stays clear of what bears on the ground from it, and what says so. */
export type FootingReach = { readonly reach: number; readonly by: 'influence' | 'face' };

/**
 * How far a dig with such sides stays away whose bottom is `height` metres below a footing's: as the rule of thumb has it, or as its face is cut
 * back where that goes further.
 */
export function footingReach(site: Site, sides: CutSides, height: number): FootingReach {
  const [byRule, byFace] = [
    ruleValue(site, 'footingInfluence') * Math.max(0, height),
    cutBack(sides, height),
  ];
  return byFace > byRule ? { reach: byFace, by: 'face' } : { reach: byRule, by: 'influence' };
}

/** A dig beside buildings: its pieces whose depth is known, `atLeast` where that is not all of it. */
type Beside = {
  readonly cuts: readonly Cut[];
  readonly sides: CutSides;
  readonly bottom: Region;
  readonly atLeast: boolean;
};

/**
 * Says of buildings that a dig undermines: from the bottom of a footing the ground that bears it spreads outwards going down, as flat as
 * the rule of thumb has it. A face that is cut back flatter than that meets the footing's own depth first. Where it is spared by no more
 * than what its footing was taken for, or the dig's depth is not known, that is said instead.
 *
 *      building │            \         / ground
 *      footing  ▙ . . . . . . .\. . . /
 *                 `. influence   \   /
 *                    `.            ─  bottom of the dig
 */
export function sayOfFootings(site: Site, dig: Beside, around: Surroundings, say: Say): void {
  const influence = ruleValue(site, 'footingInfluence');
  const reachAt = (height: number) => footingReach(site, dig.sides, height).reach;
  const [nearby, shallowest] = [ruleValue(site, 'nearby'), ruleValue(site, SHALLOWEST)];
  const depth = Math.max(0, ...dig.cuts.flatMap((cut) => cut.points.map((p) => p.depth)));
  const [ring = []] = dig.bottom;
  const [corner] = ring;
  if (corner === undefined) return;
  for (const derived of around.buildings) {
    const { feature, outline } = derived;
    const footing = footingOf(site, feature);
    const goesUnder = (bears: number) =>
      dig.cuts.some((cut) => {
        const reached = grownCut(cut, (deep) => reachAt(deep - bears));
        return intersectionArea(reached, regionOf(derived)) > OVERLAP_M2;
      });
    const { distance, at: place } = polylineToRing([...ring, corner], outline);
    const about: Omit<ExcavationFindingValues['footing-not-judged'], 'dig' | 'deepest'> = {
      feature: feature.id,
      kind: feature.kind,
      footing: footing.depth,
      distance,
      assumed: footing.assumed,
    };
    const { atLeast } = dig;
    if (depth > footing.depth && goesUnder(footing.depth)) {
      const reach = reachAt(depth - footing.depth);
      say(
        'dig-under-footing',
        'must',
        { ...about, depth, reach, atLeast },
        { rule: 'footingInfluence', place },
      );
    } else if (atLeast && distance < nearby) {
      const deepest = footing.depth + heightReaching(Math.max(0, distance), influence, dig.sides);
      say('footing-not-judged', 'should', { ...about, deepest }, { rule: 'footingInfluence', place });
    } else if (footing.assumed === 'foundation' && footing.row !== null && goesUnder(shallowest)) {
      const reach = reachAt(depth - shallowest);
      say('footing-taken', 'should', { ...about, depth, reach, shallowest }, { rule: footing.row, place });
    }
  }
}

/** How far below a footing a dig may go before it takes ground that bears it, so far off. */
function heightReaching(distance: number, influence: number, { slope, upright }: CutSides): number {
  const byFace = slope === 0 ? Infinity : upright + distance / slope;
  return Math.min(byFace, influence === 0 ? Infinity : distance / influence);
}
