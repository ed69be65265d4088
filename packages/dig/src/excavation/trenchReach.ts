import { type RuleName, ruleValue, type Site } from '@footmark/site';
import { cutBack } from './cut';
import { sidesOf } from './soilSlope';

/** How far (m) to either side of its pipe a trench reaches at the ground, and by which rule its sides are cut back; null: they stand straight. */
export type TrenchReach = { readonly reach: number; readonly row: RuleName | null };

/**
 * Of a trench whose sides are kept as all digs of the site are, with the invert `depth` metres below the ground; null where nobody has said what the
 * ground is.
 */
export function trenchReach(site: Site, depth: number): TrenchReach | null {
  if (site.digging.soil === 'not-chosen') return null;
  const sides = sidesOf(site, {}, () => {});
  return {
    reach: ruleValue(site, 'bottomWidth') / 2 + cutBack(sides, bottomOf(site, depth)),
    row: sides.row,
  };
}

/** The slope (horizontal over vertical) of sides that reach just so far (m); null where not even straight ones do. */
export function slopeReaching(site: Site, depth: number, reach: number): number | null {
  const beyond = reach - ruleValue(site, 'bottomWidth') / 2;
  return beyond < 0 ? null : beyond / bottomOf(site, depth);
}

function bottomOf(site: Site, depth: number): number {
  return depth + ruleValue(site, 'beddingDepth');
}
