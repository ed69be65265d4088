import { type Path, ruleValue, type Site } from '@footmark/site';
import type { DigSeverity } from '../digFinding';
import type { SayOfDrain } from './drainFinding';
import { SAME_M } from './openings';
import type { WaterSeparation } from './waterSeparation';

/** Whether a water pipe may lie so near to a sewer, what allows it, and what other codes would say. */
export function sayOfWater(
  site: Site,
  water: WaterSeparation,
  state: Path['state'],
  pressing: DigSeverity,
  say: SayOfDrain,
): void {
  const { service, distance, asked, above, aboveRule, aboveAsked, crosses, isMain, by, sure, rule } = water;
  const values = { service, distance, asked, aboveAsked, crosses, main: isMain };
  const elsewhere = ruleValue(site, 'waterLocal');
  const place = water.from;
  if (water.verdict === 'misses' && above !== null) {
    const shelf = aboveRule === 'waterShelf';
    const sleeve = crosses && !isMain && !shelf ? ruleValue(site, 'waterSleeve') : null;
    const passBelow = crosses && !isMain && above < 0 ? ruleValue(site, 'waterLocalBelow') : null;
    const missed = shelf && rule === 'waterService' ? aboveRule : rule;
    say('water-too-near', pressing, { ...values, above, shelf, sleeve, passBelow }, { place, rule: missed });
  }
  if (water.verdict === 'cannot-tell')
    say('water-depth-not-known', 'should', { ...values, missing: water.missing }, { place, rule });
  if (by !== null) {
    const allowed = { ...values, by, above, sure, elsewhere };
    const allows = by === 'height' ? aboveRule : rule;
    say('water-allowed', sure ? 'note' : 'should', allowed, { place, rule: allows });
  }
  if (water.verdict === 'meets' && state === 'proposed' && distance < elsewhere - SAME_M)
    say('water-nearer-than-elsewhere', 'note', { ...values, elsewhere }, { place, rule: 'waterLocal' });
}
