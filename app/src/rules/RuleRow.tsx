import { changeRule, type Rule, type RuleName, restoreRule, ruleOf } from '@footmark/site';
import { RotateCcw } from 'lucide-react';
import { Action } from '../controls/Action';
import { TextLine } from '../controls/TextLine';
import { edit, useSite } from '../session/siteSession';
import { words } from '../words';
import { RuleField } from './RuleField';
import styles from './rules.module.css';

/** One rule: its value, its source, and, where it was changed on this site, by whom and why. */
export function RuleRow({ name }: { readonly name: RuleName }) {
  const site = useSite();
  const rule = ruleOf(site, name);
  const label = words.ruleName(name);
  const set = (value: number | undefined) => {
    if (value === undefined) edit(`Restore a rule: ${label}`, (s) => restoreRule(s, { rule: name }));
    else edit(`Change a rule: ${label}`, (s) => changeRule(s, { change: { ...said(rule), value } }));
  };
  return (
    <div className={styles.rule}>
      <div className={styles.value}>
        <RuleField label={label} rule={rule} onChange={set} />
        {rule.changed === null ? null : (
          <Action look="icon" aria-label={`Back to the rule’s own: ${label}`} onPress={() => set(undefined)}>
            <RotateCcw size={20} aria-hidden />
          </Action>
        )}
      </div>
      <p className={styles.source}>
        {rule.changed === null ? null : <b>{words.ruleChangeText(rule.changed, rule.row, site.units)} </b>}
        {words.basisText(rule.row)}
      </p>
      {rule.changed === null ? null : (
        <div className={styles.why}>
          <TextLine
            label="Changed by"
            value={rule.changed.who}
            onCommit={(who) =>
              edit('Say who changed a rule', (s) => changeRule(s, { change: { ...said(rule), who } }))
            }
          />
          <TextLine
            label="Because"
            value={rule.changed.why}
            maxLength={5000}
            onCommit={(why) =>
              edit('Say why a rule was changed', (s) => changeRule(s, { change: { ...said(rule), why } }))
            }
          />
        </div>
      )}
    </div>
  );
}

/** A rule's change as it stands, or the beginning of one. */
function said({ name, value, changed }: Rule) {
  return changed ?? { rule: name, value, who: '', why: '' };
}
