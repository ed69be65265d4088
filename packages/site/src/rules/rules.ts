import { drainRules, drainRulesUpc } from './drainRules';
import { metricRules, metricTolerance } from './metricRules';
import { routeRules } from './routeRules';
import { separationRules, separationRulesUpc } from './separationRules';
import type { SettingRow } from './settings';
import { type TreeRuleId, treeRules } from './treeRules';
import { trenchRules } from './trenchRules';

/** What the rules are about, as the page that lists them is divided. */
export const ruleGroups = {
  trench: trenchRules,
  trees: treeRules,
  separation: separationRules,
  drain: drainRules,
  route: routeRules,
} as const;
export type RuleGroup = keyof typeof ruleGroups;

/** Every rule by its name, as the first rule set has it. */
export const rules = {
  ...trenchRules,
  ...treeRules,
  ...separationRules,
  ...drainRules,
  ...routeRules,
} as const;
export type RuleName = keyof typeof rules;

export const ruleNames = Object.keys(rules) as unknown as readonly [RuleName, ...RuleName[]]; // keys of a const table

export type RuleSet = {
  /** Rows that differ from the first set's. */
  readonly rows: Partial<Record<RuleName, SettingRow>>;
  readonly treeRule: TreeRuleId;
  /** What decides by height where water is nearer to a sewer than is asked. */
  readonly waterOver: 'waterAbove' | 'waterShelf';
};

/**
 * Rule sets that a site picks from: two US model codes, and three in metres, in which only the trees go by a standard of the country: for
 * all else the US values stand in as models, and say so. Model codes are adopted and amended locally: every value can be changed on a site.
 */
export const ruleSets = {
  'us-ipc': { rows: {}, treeRule: 'critical-root-radius', waterOver: 'waterAbove' },
  'us-upc': {
    rows: { ...drainRulesUpc, ...separationRulesUpc },
    treeRule: 'critical-root-radius',
    waterOver: 'waterShelf',
  },
  metric: {
    rows: { ...metricRules, toleranceZone: metricTolerance },
    treeRule: 'bs-5837',
    waterOver: 'waterAbove',
  },
  britain: { rows: metricRules, treeRule: 'bs-5837', waterOver: 'waterAbove' },
  australia: { rows: metricRules, treeRule: 'as-4970', waterOver: 'waterAbove' },
} as const satisfies Record<string, RuleSet>;
export type RuleSetId = keyof typeof ruleSets;

export const ruleSetIds = Object.keys(ruleSets) as unknown as readonly [RuleSetId, ...RuleSetId[]]; // keys of a const table
