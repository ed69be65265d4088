import { type RuleName, ruleValue, type Site, WITHIN_95 } from '@footmark/site';
import type { Sides } from './excavation';
import type { Say } from './excavationFinding';

/** Depths that differ from a limit by less (m) are at it: feet that became metres. */
const AT_LIMIT_M = 1e-6;

/** How deep a dig is at its most (m), and how sure that is; `sigma` null where it may be deeper in a place where that is not known. */
export type KnownDepth = { readonly most: number; readonly sigma: number | null };

/**
 * What the depth of a dig asks for: a protective system, an engineer, and who decides below that, which only a depth tells that is known
 * all along. `known` null: nothing is known of it.
 */
export function sayOfDepth(
  site: Site,
  known: KnownDepth | null,
  sides: Sides,
  { width: bottom }: { readonly width: number },
  say: Say,
): void {
  if (known === null) return;
  const { most, sigma } = known;
  const atLeast = sigma === null;
  const at = (rule: RuleName) => ruleValue(site, rule);
  const [system, engineer] = [at('protectionDepth'), at('engineerDepth')];
  const about = { depth: most, limit: system };
  const pastTable = most > engineer + AT_LIMIT_M;
  const rule = { rule: 'protectionDepth' } as const;
  if (sides.as === 'rock' && sides.protection === 'slope')
    say('rock-must-be-stable', 'should', { depth: most, atLeast }, rule);
  else if (most >= system - AT_LIMIT_M)
    say(
      'protective-system-needed',
      'must',
      { ...about, atLeast, planned: pastTable ? 'engineer' : sides.protection },
      rule,
    );
  else if (!atLeast) {
    say('competent-person-decides', 'should', about, rule);
    if (most + WITHIN_95 * sigma >= system - AT_LIMIT_M)
      say('depth-may-pass-limit', 'should', { ...about, sigma }, rule);
  }
  if (!atLeast && most >= system - AT_LIMIT_M) sayOfShortTerm(site, { most, sigma }, sides, bottom, say);
  if (pastTable)
    say('engineer-designs', 'must', { depth: most, limit: engineer, atLeast }, { rule: 'engineerDepth' });
  if (sides.protection === 'shield') sayOfShield(most, atLeast, sides, at('shieldAbove'), say);
}

/** Where a shield ends below the ground, the ground above is cut back and it stands above the straight side; else it reaches the ground. */
function sayOfShield(
  depth: number,
  atLeast: boolean,
  { slope, upright }: Sides,
  above: number,
  say: Say,
): void {
  const rule = { rule: 'shieldAbove' } as const;
  if (slope === 0) say('shield-reaches-ground', 'note', { depth, atLeast }, rule);
  else if (depth > upright) say('shield-stands-above', 'note', { above, upright, slope }, rule);
}

/** Soil A may stand steeper for a day, down to a depth; the width that is taken stays that of the gentler slope. */
function sayOfShortTerm(
  site: Site,
  { most, sigma }: { readonly most: number; readonly sigma: number },
  { as, protection, slope: taken }: Sides,
  bottom: number,
  say: Say,
): void {
  const [slope, limit] = [ruleValue(site, 'slopeShortTerm'), ruleValue(site, 'shortTermDepth')];
  if (as !== 'a' || protection !== 'slope' || slope >= taken) return;
  if (most + WITHIN_95 * sigma > limit + AT_LIMIT_M) return;
  const width = bottom + 2 * slope * most;
  say('short-term-may-be-steeper', 'note', { depth: most, slope, limit, width }, { rule: 'slopeShortTerm' });
}
