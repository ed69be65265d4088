import { formatSlope, type SettingRow, type Units } from '@footmark/site';
import { velocityText } from './amountText';
import { angleText, lengthText } from './measureText';

/** A value of a table in the unit of its row, as the site prints such values. */
export function ruleAmountText(value: number, unit: SettingRow['unit'], units: Units): string {
  switch (unit) {
    case 'm':
      return lengthText(value, units);
    case 'rad':
      return angleText(value);
    case 'fall':
      return formatSlope(value, units.length === 'm' ? 'percent' : 'in/ft');
    case 'm/s':
      return velocityText(value, units);
    case '1':
      return String(Number(value.toFixed(3)));
  }
}
