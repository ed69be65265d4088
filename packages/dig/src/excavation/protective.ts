import { type RuleName, ruleValue, type Site, WITHIN_95 } from '@footmark/site';
import type { Sides } from './excavation';
import type { ExcavationFindingValues, Say } from './excavationFinding';

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
  const pastTable = most > engineer + AT_LIMIT_M;
  const bare = bareRock(most, sides);
  if (bare > AT_LIMIT_M)
    say('rock-must-be-stable', 'should', { depth: bare, atLeast }, { rule: 'protectionDepth' });
  if (sides.as !== 'rock' || sides.protection === 'shield')
    sayOfSystem(known, system, pastTable ? 'engineer' : sides.protection, say);
  if (!atLeast && most >= system - AT_LIMIT_M) sayOfShortTerm(site, { most, sigma }, sides, bottom, say);
  if (pastTable)
    say('engineer-designs', 'must', { depth: most, limit: engineer, atLeast }, { rule: 'engineerDepth' });
  if (sides.protection === 'shield') sayOfShield(most, atLeast, sides, at('shieldAbove'), say);
}

/** How high rock stands with nothing before it (m): all the way up, or above the straight side behind a shield. */
function bareRock(depth: number, { as, row, upright }: Sides): number {
  return as === 'rock' && row !== null ? depth - upright : 0;
}

function sayOfSystem(
  { most, sigma }: KnownDepth,
  limit: number,
  planned: ExcavationFindingValues['protective-system-needed']['planned'],
  say: Say,
): void {
  const about = { depth: most, limit };
  const rule = { rule: 'protectionDepth' } as const;
  if (most >= limit - AT_LIMIT_M)
    say('protective-system-needed', 'must', { ...about, atLeast: sigma === null, planned }, rule);
  else if (sigma !== null) {
    say('competent-person-decides', 'should', about, rule);
    if (most + WITHIN_95 * sigma >= limit - AT_LIMIT_M)
      say('depth-may-pass-limit', 'should', { ...about, sigma }, rule);
  }
}

/**
 * Where a shield ends below the ground, the ground above is cut back as its soil is, and the shield stands above the straight side; where
 * its height is not told it reaches the ground.
 */
function sayOfShield(
  depth: number,
  atLeast: boolean,
  { slope, upright, row }: Sides,
  above: number,
  say: Say,
): void {
  const rule = { rule: 'shieldAbove' } as const;
  if (row === null) say('shield-reaches-ground', 'note', { depth, atLeast }, rule);
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
