import type { RuleChange, SettingRow, Units } from '@footmark/site';
import { ruleAmountText } from '../ruleAmountText';

/** That a rule has another value on a site, and which: who changed it, from what, and why. */
export function ruleChangeText(
  { value, who, why }: RuleChange,
  row: Pick<SettingRow, 'value' | 'unit'>,
  units: Units,
): string {
  const by = who === '' ? '' : ` by ${who}`;
  const because = why === '' ? '' : `: ${why}`;
  const text = `Changed on this site${by} from ${ruleAmountText(row.value, row.unit, units)} to ${ruleAmountText(value, row.unit, units)}${because}`;
  return text.endsWith('.') ? text : `${text}.`;
}
