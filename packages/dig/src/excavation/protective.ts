import { type RuleName, ruleValue, type Site } from '@footmark/site';
import type { DigDepth, Sides } from './excavation';
import type { Say } from './excavationFinding';

/** A normal error lies within this many standard deviations with 95 %. */
const WITHIN_95 = 1.96;

/** Depths that differ from a limit by less (m) are at it: feet that became metres. */
const AT_LIMIT_M = 1e-6;

/** What the depth of a dig asks for: a protective system, an engineer, and who decides below that. */
export function sayOfDepth(site: Site, { most, sigma }: DigDepth, sides: Sides, say: Say): void {
  const at = (rule: RuleName) => ruleValue(site, rule);
  const [system, engineer] = [at('protectionDepth'), at('engineerDepth')];
  const about = { depth: most, limit: system };
  const rule = { rule: 'protectionDepth' } as const;
  if (sides.as === 'rock' && sides.protection === 'slope')
    say('rock-must-be-stable', 'should', { depth: most }, rule);
  else if (most >= system - AT_LIMIT_M)
    say('protective-system-needed', 'must', { ...about, planned: sides.protection }, rule);
  else {
    say('competent-person-decides', 'should', about, rule);
    if (most + WITHIN_95 * sigma >= system - AT_LIMIT_M)
      say('depth-may-pass-limit', 'should', { ...about, sigma }, rule);
  }
  if (most > engineer + AT_LIMIT_M)
    say('engineer-designs', 'must', { depth: most, limit: engineer }, { rule: 'engineerDepth' });
  if (sides.protection === 'shield')
    say('shield-stands-above', 'note', { above: at('shieldAbove') }, { rule: 'shieldAbove' });
}
