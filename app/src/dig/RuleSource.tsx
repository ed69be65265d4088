import { type RuleName, ruleOf } from '@footmark/site';
import { useSite } from '../session/siteSession';
import { words } from '../words';
import styles from './dig.module.css';

/** Which rule asks; where this site has its own value for it, who changed it and why, and the value that it had. */
export function RuleSource({ rule }: { readonly rule: RuleName }) {
  const site = useSite();
  const { row, changed } = ruleOf(site, rule);
  return (
    <small className={styles.source}>
      {changed === null ? null : <b>{words.ruleChangeText(changed, row, site.units)} </b>}
      {words.basisText(row)}
    </small>
  );
}
