import type { RuleChange, SiteRules } from '../document/siteRules';
import { type RuleName, type RuleSet, ruleSets, rules } from './rules';
import type { SettingRow } from './settings';
import type { TreeRuleId } from './treeRules';

/** A rule as it holds on a site. */
export type Rule = {
  readonly name: RuleName;
  /** What holds: the site's own value, else the row's. */
  readonly value: number;
  readonly row: SettingRow;
  /** Who changed it on this site, to what, and why; null when nobody did. */
  readonly changed: RuleChange | null;
};

/** A rule with its value on a site. */
export function ruleOf(site: { readonly rules: SiteRules }, name: RuleName): Rule {
  const set: RuleSet = ruleSets[site.rules.set];
  const row = set.rows[name] ?? rules[name];
  const changed = site.rules.changed.find((c) => c.rule === name) ?? null;
  return { name, value: changed?.value ?? row.value, row, changed };
}

/** Only its value, in the unit of its row. */
export function ruleValue(site: { readonly rules: SiteRules }, name: RuleName): number {
  return ruleOf(site, name).value;
}

/** By which rule the site's trees are judged: its own choice, else the set's. */
export function treeRuleOf(site: { readonly rules: SiteRules }): TreeRuleId {
  return site.rules.trees ?? ruleSets[site.rules.set].treeRule;
}

/** Which rule decides by height where water is nearer to a sewer than is asked. */
export function waterOverOf(site: { readonly rules: SiteRules }): RuleSet['waterOver'] {
  return ruleSets[site.rules.set].waterOver;
}
