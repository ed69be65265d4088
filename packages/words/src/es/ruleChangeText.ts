import type { RuleChange, SettingRow, Units } from '@footmark/site';
import { ruleAmountText } from '../ruleAmountText';

/** That a rule has another value on a site, and which: who changed it, from what, and why. */
export function ruleChangeText(
  { value, who, why }: RuleChange,
  row: Pick<SettingRow, 'value' | 'unit'>,
  units: Units,
): string {
  const by = who === '' ? '' : ` por ${who}`;
  const because = why === '' ? '' : `: ${why}`;
  const text = `Cambiado en este sitio${by} de ${ruleAmountText(row.value, row.unit, units)} a ${ruleAmountText(value, row.unit, units)}${because}`;
  return text.endsWith('.') ? text : `${text}.`;
}
