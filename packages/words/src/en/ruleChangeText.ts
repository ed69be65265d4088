import { formatSlope, type RuleChange, type SettingRow, type Units } from '@footmark/site';
import { angleText, lengthText } from '../measureText';
import { velocityText } from './digMeasure';

/** That a rule has another value on a site, and which: who changed it, from what, and why. */
export function ruleChangeText(
  { value, who, why }: RuleChange,
  row: Pick<SettingRow, 'value' | 'unit'>,
  units: Units,
): string {
  const by = who === '' ? '' : ` by ${who}`;
  const because = why === '' ? '' : `: ${why}`;
  const text = `Changed on this site${by} from ${amount(row.value)} to ${amount(value)}${because}`;
  return text.endsWith('.') ? text : `${text}.`;

  function amount(of: number): string {
    switch (row.unit) {
      case 'm':
        return lengthText(of, units);
      case 'm/s':
        return velocityText(of, units);
      case 'rad':
        return angleText(of);
      case 'fall':
        return formatSlope(of, units.length === 'm' ? 'percent' : 'in/ft');
      case '1':
        return String(Number(of.toFixed(3)));
    }
  }
}
