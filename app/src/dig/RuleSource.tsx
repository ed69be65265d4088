import { type RuleName, ruleOf } from '@footmark/site';
import { useSite } from '../session/siteSession';
import { words } from '../words';
import styles from './dig.module.css';

/** Which rule asks, and whether this site has its own value for it. */
export function RuleSource({ rule }: { readonly rule: RuleName }) {
  const site = useSite();
  const { row, changed } = ruleOf(site, rule);
  return (
    <small className={styles.source}>
      {changed === null ? null : (
        <b>Changed on this site{changed.who === '' ? '' : ` by ${changed.who}`}. </b>
      )}
      {words.basisText(row)}
    </small>
  );
}
