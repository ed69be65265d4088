import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatSlope, parseSlope } from './slope';

function slope(text: string): number {
  const result = parseSlope(text, { allowNegative: true });
  if (!result.ok) throw new Error(`${text}: ${result.code}`);
  return result.value;
}

describe('parseSlope', () => {
  it.each([
    ['1/4 in/ft', 1 / 48],
    ['1/4"/ft', 1 / 48],
    ['¼″/ft', 1 / 48],
    [`1/4" / '`, 1 / 48],
    ['1/4 in per ft', 1 / 48],
    ['0.25 inch per foot', 1 / 48],
    ['1 in/ft', 1 / 12],
    ['1:48', 1 / 48],
    ['1 : 48', 1 / 48],
    ['1 in 48', 1 / 48],
    ['1/4:12', 1 / 48],
    ['2 %', 0.02],
    ['2%', 0.02],
    ['2,5 %', 0.025],
    ['2 percent', 0.02],
    ['20 mm/m', 0.02],
    ['20 ‰', 0.02],
    ['0.02 ft/ft', 0.02],
    ['1.5 m/m', 1.5],
    ['0.02', 0.02],
    ['-2 %', -0.02],
    ['0', 0],
    ['0:1', 0],
  ])('reads %s as %f', (text, expected) => {
    expect(slope(text)).toBeCloseTo(expected, 14);
  });

  it('reads a bare number in the default style', () => {
    expect(parseSlope('1/4', { defaultStyle: 'in/ft' })).toEqual({ ok: true, value: 0.25 / 12 });
    expect(parseSlope('2', { defaultStyle: 'percent' })).toEqual({ ok: true, value: 0.02 });
    expect(parseSlope('48', { defaultStyle: 'ratio' })).toEqual({ ok: true, value: 1 / 48 });
    expect(parseSlope('0', { defaultStyle: 'ratio' })).toMatchObject({ code: 'zero-denominator' });
  });

  it.each([
    ['', 'empty'],
    ['steep', 'not-a-number'],
    ['1/4', 'slope-needs-unit'],
    ['2', 'slope-needs-unit'],
    ['1:0', 'zero-denominator'],
    ['1/0 in/ft', 'zero-denominator'],
    ['2 ft', 'unknown-unit'],
    ['-2 %', 'negative'],
    ['--2 %', 'two-signs'],
    ['9'.repeat(400).concat(' %'), 'too-large'],
  ])('refuses "%s" as %s', (text, code) => {
    expect(parseSlope(text)).toMatchObject({ ok: false, code });
  });

  // Source: IPC Table 704.1 slopes in per cent (STANDARDS D1).
  it.each([
    ['1/4 in/ft', '2.0833 %'],
    ['1/8 in/ft', '1.0417 %'],
    ['1/16 in/ft', '0.5208 %'],
  ])('turns %s into %s', (text, expected) => {
    expect(formatSlope(slope(text), 'percent', { decimals: 4 })).toBe(expected);
  });
});

describe('formatSlope', () => {
  it('prints each style', () => {
    expect(formatSlope(1 / 48, 'in/ft')).toBe('¼ in/ft');
    expect(formatSlope(1 / 48, 'in/ft', { plain: true })).toBe('1/4 in/ft');
    expect(formatSlope(1 / 48, 'percent')).toBe('2.08 %');
    expect(formatSlope(0.02, 'percent', { decimals: 0 })).toBe('2 %');
    expect(formatSlope(1 / 48, 'ratio')).toBe('1:48');
    expect(formatSlope(0.02, 'decimal')).toBe('0.0200');
    expect(formatSlope(0, 'ratio')).toBe('0:1');
    expect(formatSlope(0.4, 'ratio')).toBe('1:2.5');
    expect(formatSlope(3, 'ratio')).toBe('3:1');
    expect(formatSlope(1 / 9.996, 'ratio')).toBe('1:10');
    expect(formatSlope(-1 / 48, 'ratio')).toBe('−1:48');
    expect(formatSlope(-1 / 48, 'in/ft')).toBe('−¼ in/ft');
    expect(() => formatSlope(Number.NaN, 'ratio')).toThrow(RangeError);
  });

  const anySlope = fc.double({ min: -0.99, max: 0.99, noNaN: true });

  it.each([
    ['in/ft', 1 / 192],
    ['percent', 1e-4],
    ['decimal', 1e-4],
  ] as const)('reads back from %s within half a step', (style, step) => {
    fc.assert(
      fc.property(anySlope, fc.boolean(), (value, plain) => {
        expect(Math.abs(slope(formatSlope(value, style, { plain })) - value)).toBeLessThanOrEqual(
          step / 2 + 1e-12,
        );
      }),
    );
  });

  it('reads back from a ratio within half a step of its larger part', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-4, max: 50, noNaN: true }), fc.boolean(), (size, down) => {
        const back = slope(formatSlope(down ? -size : size, 'ratio'));
        expect(Math.sign(back)).toBe(down ? -1 : 1);
        const larger = (value: number) => (size > 1 ? value : 1 / value);
        const step = larger(size) < 10 ? 0.01 : 1;
        expect(Math.abs(larger(Math.abs(back)) - larger(size))).toBeLessThanOrEqual(step / 2 + 1e-9);
      }),
    );
  });
});
