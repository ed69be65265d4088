import {
  chooseRuleSet,
  chooseTreeRule,
  type RuleGroup,
  type RuleName,
  ruleGroups,
  ruleSetIds,
  treeRuleIds,
  treeRuleOf,
} from '@footmark/site';
import { X } from 'lucide-react';
import cards from '../cards/cards.module.css';
import { Fold } from '../cards/Fold';
import { Action } from '../controls/Action';
import { Choice } from '../controls/Choice';
import { edit, useSite } from '../session/siteSession';
import { words } from '../words';
import { RuleRow } from './RuleRow';

/** The rules that hold on this site, each with where it is from; any of them can be given this site's own value. */
export function RulesCard({ onClose }: { readonly onClose: () => void }) {
  const site = useSite();
  return (
    <section className={cards.card} aria-label="Rules">
      <div className={cards.head}>
        <h2>Rules</h2>
        <Action look="icon" aria-label="Close" onPress={onClose}>
          <X size={22} aria-hidden />
        </Action>
      </div>
      <p className={cards.empty}>{words.modelValuesText()}</p>
      <Choice
        label="Rules of"
        options={ruleSetIds.map((id) => ({ id, name: words.ruleSetName(id) }))}
        value={site.rules.set}
        onChange={(set) => edit('Choose the rules', (s) => chooseRuleSet(s, { set }))}
      />
      <Choice
        label="Root zones of trees by"
        options={treeRuleIds.map((id) => ({ id, name: words.treeRuleName(id) }))}
        value={treeRuleOf(site)}
        onChange={(trees) => edit('Choose the rule for trees', (s) => chooseTreeRule(s, { trees }))}
      />
      {(Object.keys(ruleGroups) as RuleGroup[]).map((group) => (
        // keys of a const table
        <Fold key={group} title={words.ruleGroupName(group)}>
          <ul className={cards.rows}>
            {(Object.keys(ruleGroups[group]) as RuleName[]).map((name) => (
              // keys of a const table
              <li key={name}>
                <RuleRow name={name} />
              </li>
            ))}
          </ul>
        </Fold>
      ))}
    </section>
  );
}
