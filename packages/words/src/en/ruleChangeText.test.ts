import { expect, it } from 'vitest';
import { ruleChangeText } from './ruleChangeText';

const units = { length: 'ft', diameter: 'in', direction: 'bearing' } as const;
const change = { rule: 'waterService', value: 8 * 0.3048, who: '', why: '' } as const;

it('a changed rule says who changed it, from what to what, and why', () => {
  const row = { value: 5 * 0.3048, unit: 'm' } as const;
  expect(ruleChangeText(change, row, units)).toBe('Changed on this site from 5.0 ft to 8.0 ft.');
  expect(ruleChangeText({ ...change, who: 'R. Alder', why: 'City ordinance.' }, row, units)).toBe(
    'Changed on this site by R. Alder from 5.0 ft to 8.0 ft: City ordinance.',
  );
});

it('is told in the unit of its rule', () => {
  const told = (value: number, from: number, unit: '1' | 'rad' | 'fall' | 'm/s') =>
    ruleChangeText({ ...change, value }, { value: from, unit }, units);
  expect(told(1.5, 1, '1')).toContain('from 1 to 1.5');
  expect(told(Math.PI / 4, Math.PI / 6, 'rad')).toContain('from 30° to 45°');
  // the international foot
  expect(told(2.5 * 0.3048, 2 * 0.3048, 'm/s')).toContain('from 2.0 ft/s to 2.5 ft/s');
  // a quarter of an inch a foot is 1 in 48
  expect(told(1 / 96, 1 / 48, 'fall')).toMatch(/from ¼ in\/ft to ⅛ in\/ft/);
});
