import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatDeclination, parseDeclination } from './declination';

function degrees(text: string): number {
  const read = parseDeclination(text);
  if (!read.ok) throw new Error(`${text}: ${read.code}`);
  return (read.value * 180) / Math.PI;
}

describe('parseDeclination', () => {
  it.each([
    ['8.5 E', 8.5],
    ['8.5° East', 8.5],
    ['E 8.5', 8.5],
    [`8°30' E`, 8.5],
    ['+8.5', 8.5],
    ['11 15 W', -11.25],
    [`W11°15'`, -11.25],
    ['−11,25°', -11.25],
    ['0', 0],
    ['0 W', 0],
    ['180 W', -180],
  ])('reads %s', (text, expected) => {
    expect(degrees(text)).toBeCloseTo(expected, 12);
  });

  it.each([
    ['', 'empty', {}],
    ['8.5', 'east-or-west-missing', { text: '8.5' }],
    ['-8.5 E', 'sign-and-hemisphere', { text: '-8.5 e' }],
    ['--8', 'two-signs', { text: '--8' }],
    ['181 E', 'declination-over-180', { degrees: 181, limit: 180 }],
    ['8 60 E', 'minutes-too-large', { minutes: 60, limit: 60 }],
    ['north', 'not-a-number', { text: 'north' }],
  ])('refuses %j: %s', (text, code, values) => {
    expect(parseDeclination(text)).toEqual({ ok: false, code, values });
  });
});

it('prints what is read back to a hundredth of a degree', () => {
  expect(formatDeclination(-0)).toBe('0°');
  fc.assert(
    fc.property(fc.double({ min: -Math.PI, max: Math.PI, noNaN: true }), (radians) => {
      expect(degrees(formatDeclination(radians))).toBeCloseTo((radians * 180) / Math.PI, 1.99);
    }),
  );
});
