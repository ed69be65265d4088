import { ruleOf } from '@footmark/site';
import { describe, expect, it } from 'vitest';
import { ruleEntry } from './ruleEntry';

const feet = ruleEntry('m/s', { length: 'ft-in' });
const metric = ruleEntry('m/s', { length: 'm' });

// the international foot is 0.3048 m
describe('how fast water has to run', () => {
  // NSPC 2009, Appendix K: 2 ft/s
  it('is shown as its code has it where lengths are in feet, and in metres elsewhere', () => {
    const { row } = ruleOf({ rules: { set: 'us-ipc', changed: [] } }, 'scourVelocity');
    expect(ruleEntry(row.unit, { length: 'ft' }).print(row.value)).toBe('2 ft/s');
    expect(ruleEntry(row.unit, { length: 'm' }).print(row.value)).toBe('0.61 m/s');
  });

  it.each(['2.5', '2.5 ft/s', '2 1/2 ft/s'])('is read from %s as feet where lengths are in feet', (text) => {
    expect(feet.parse(text)).toEqual({ ok: true, value: expect.closeTo(2.5 * 0.3048, 12) });
  });

  it('is read as metres elsewhere, and the other unit is not taken for it', () => {
    expect(metric.parse('0.7')).toEqual({ ok: true, value: 0.7 });
    expect(metric.parse('0.7 m/s')).toEqual({ ok: true, value: 0.7 });
    expect(metric.parse('2 ft/s')).toMatchObject({ code: 'not-a-number' });
    expect(feet.parse('0.7 m/s')).toMatchObject({ code: 'not-a-number' });
  });
});

it.each([
  ['m', 1.524, '5'],
  ['fall', 1 / 48, '1/4'],
  ['rad', Math.PI / 4, '45'],
  ['1', 0.015, '0.015'],
] as const)('a rule in %s is shown as it is read', (unit, value, starts) => {
  const { print, parse } = ruleEntry(unit, { length: 'ft' });
  expect(print(value)).toMatch(new RegExp(`^${starts}`));
  expect(parse(print(value))).toEqual({ ok: true, value: expect.closeTo(value, 9) });
});
