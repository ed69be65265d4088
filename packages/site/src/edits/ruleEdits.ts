import type { RuleChange, SiteRules } from '../document/siteRules';
import type { RuleName } from '../rules/rules';
import type { TreeRuleId } from '../rules/treeRules';
import type { Edit } from './edit';

/** Picks the rules that hold on the site. Values that were changed on it stay changed. */
export const chooseRuleSet: Edit<{ set: SiteRules['set'] }> = (site, { set }) => ({
  ...site,
  rules: { ...site.rules, set },
});

/** Picks the rule for trees; undefined goes back to the rule set's own. */
export const chooseTreeRule: Edit<{ trees: TreeRuleId | undefined }> = (site, { trees }) => {
  const { trees: _, ...rest } = site.rules;
  return { ...site, rules: trees === undefined ? rest : { ...rest, trees } };
};

/** Gives a rule another value on this site, with who said so and why. */
export const changeRule: Edit<{ change: RuleChange }> = (site, { change }) => ({
  ...site,
  rules: {
    ...site.rules,
    changed: [...site.rules.changed.filter((c) => c.rule !== change.rule), change],
  },
});

/** Goes back to the value of the rule set. */
export const restoreRule: Edit<{ rule: RuleName }> = (site, { rule }) => ({
  ...site,
  rules: { ...site.rules, changed: site.rules.changed.filter((c) => c.rule !== rule) },
});
