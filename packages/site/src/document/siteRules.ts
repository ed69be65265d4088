import { z } from 'zod';
import { ruleNames, ruleSetIds } from '../rules/rules';
import { treeRuleIds } from '../rules/treeRules';
import { line, prose } from './scalars';

/** A rule's value that was changed on this site (in the rule's unit: m, m/s, rad or a plain number), by whom and why. */
export const ruleChange = z.strictObject({
  rule: z.enum(ruleNames),
  value: z.number().min(0).max(1e6),
  who: line,
  why: prose,
});
export type RuleChange = z.infer<typeof ruleChange>;

/** Which rules hold on a site. `trees` absent: the rule set's own. */
export const siteRules = z.strictObject({
  set: z.enum(ruleSetIds),
  trees: z.enum(treeRuleIds).optional(),
  changed: z.array(ruleChange).max(500),
});
export type SiteRules = z.infer<typeof siteRules>;
