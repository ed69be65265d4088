import { type Dig, type RuleName, ruleValue, type Site, type Soil } from '@footmark/site';
import type { Sides } from './excavation';
import type { Say } from './excavationFinding';

const ROWS = {
  'not-chosen': 'slopeUnknown',
  rock: 'slopeRock',
  a: 'slopeA',
  b: 'slopeB',
  c: 'slopeC',
} as const satisfies Record<Soil, RuleName>;

/** Soils that ground is not any more once it was dug. */
const UNDISTURBED: readonly Soil[] = ['rock', 'a'];

/** How a dig's sides are kept: as it says or as all digs of the site are. Soil that nobody chose has the gentlest slope, above a shield too. */
export function sidesOf(site: Site, dig: Pick<Dig, 'protection' | 'shieldHeight'>, say: Say): Sides {
  const { soil: chosen, disturbed } = site.digging;
  const protection = dig.protection ?? site.digging.protection;
  const { shieldHeight } = dig;
  if (protection === 'shield' && shieldHeight === undefined)
    return { protection, chosen, as: chosen, slope: 0, upright: 0, row: null };
  const upright =
    protection === 'slope' ? 0 : Math.max(0, (shieldHeight ?? 0) - ruleValue(site, 'shieldAbove'));
  const row = ROWS[chosen];
  const slope = ruleValue(site, row);
  if (chosen === 'not-chosen') say('soil-not-chosen', 'should', { slope }, { rule: row });
  if (!disturbed || !UNDISTURBED.includes(chosen))
    return { protection, chosen, as: chosen, slope, upright, row };
  const gentler = Math.max(slope, ruleValue(site, 'slopeDisturbed'));
  say('disturbed-soil-is-not', 'must', { chosen, as: 'b', slope: gentler }, { rule: 'slopeDisturbed' });
  return { protection, chosen, as: 'b', slope: gentler, upright, row: 'slopeDisturbed' };
}
