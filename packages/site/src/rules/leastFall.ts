import type { SiteRules } from '../document/siteRules';
import { type Rule, ruleOf, ruleValue } from './ruleOf';
import type { RuleName } from './rules';

/** Inside diameters stray from the nominal sizes that codes name: one that is less by no more than this share is of the size. */
export const NOMINAL_SHARE = 1 / 16;

/** The least fall over run that is asked of a drain with an inside diameter (m) on a site. */
export function leastFall(site: { readonly rules: SiteRules }, diameter: number): Rule {
  const reaches = (size: RuleName) => diameter >= (1 - NOMINAL_SHARE) * ruleValue(site, size);
  if (reaches('fallLargeFrom')) return ruleOf(site, 'fallLarge');
  return ruleOf(site, reaches('fallMiddleFrom') ? 'fallMiddle' : 'fallSmall');
}
