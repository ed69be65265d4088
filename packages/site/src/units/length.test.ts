import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatLength, LENGTH_LIMIT_M, type LengthStyle, lengthInputText, parseLength } from './length';

function metres(text: string, unit: LengthStyle = 'ft'): number {
  const result = parseLength(text, unit, { allowNegative: true });
  if (!result.ok) throw new Error(`${text}: ${result.code}`);
  return result.value;
}

// All expected values follow from 1 in = 0.0254 m (Federal Register 85 No. 193, 62698): 23 ft 6 1/2 in = 282.5 in.
describe('parseLength', () => {
  it.each([
    `23' 6 1/2"`,
    `23'6 1/2`,
    `23'6.5"`,
    `23'-6 1/2"`,
    `23'-6-1/2"`,
    `23' - 6½"`,
    `23 ft 6 1/2 in`,
    `23ft6.5in`,
    `23 ft. 6-1/2 in.`,
    `23 feet 6 1/2 inches`,
    `23-6 1/2`,
    `23-6-1/2`,
    `23-6½"`,
    `23–6 1/2"`,
    `23′ 6½″`,
    `23’ 6½”`,
    `23' 6½''`,
    `23' 6 1⁄2"`,
    `23' 6,5"`,
    `282.5 in`,
    `282 1/2"`,
    `  23'   6 1/2"  `,
  ])('reads %s as 282.5 in', (text) => {
    expect(metres(text)).toBeCloseTo(7.1755, 12);
    expect(metres(text, 'ft-in')).toBeCloseTo(7.1755, 12);
  });

  it.each([
    [`23'6`, 23.5 * 0.3048],
    [`23' 6"`, 23.5 * 0.3048],
    ['23ft6in', 23.5 * 0.3048],
    ['23-6', 23.5 * 0.3048],
    [`23'`, 23 * 0.3048],
    [`23' 0"`, 23 * 0.3048],
    [`0'6"`, 0.1524],
    [`23.54 ft`, 23.54 * 0.3048],
    [`23.54'`, 23.54 * 0.3048],
    [`.5 ft`, 0.1524],
    [`5. ft`, 1.524],
    ['+5 ft', 1.524],
    [`6 1/2"`, 0.1651],
    [`6½"`, 0.1651],
    [`½"`, 0.0127],
    [`1/2"`, 0.0127],
    [`⅛ in`, 0.003175],
    [`¾"`, 0.01905],
    [`14"`, 0.3556],
    [`23' 11 15/16"`, 287.9375 * 0.0254],
    ['7.18 m', 7.18],
    ['7,18 m', 7.18],
    ['7,1804 m', 7.1804],
    ['7 metres', 7],
    ['7180 mm', 7.18],
    ['7180mm', 7.18],
    ['71.8 cm', 0.718],
    ['0', 0],
    ['-0', 0],
  ])('reads %s as %f m', (text, expected) => {
    expect(metres(text)).toBeCloseTo(expected, 12);
  });

  it('reads a bare number in the default unit', () => {
    expect(metres('23.5', 'ft')).toBeCloseTo(7.1628, 12);
    expect(metres('23.5', 'ft-in')).toBeCloseTo(7.1628, 12);
    expect(metres('23 1/2', 'ft')).toBeCloseTo(7.1628, 12);
    expect(metres('23.5', 'm')).toBe(23.5);
    expect(metres('23,5', 'm')).toBe(23.5);
    expect(metres('23.5', 'in')).toBeCloseTo(0.5969, 12);
    expect(metres('235', 'mm')).toBeCloseTo(0.235, 12);
    expect(metres('3937', 'usft')).toBeCloseTo(1200, 9);
  });

  it('reads the US survey foot only where it is named', () => {
    for (const text of ['3937 usft', '3937 ft (US)', '3937 us ft', '3937 ftUS', '3,937 US survey feet'])
      expect(metres(text)).toBeCloseTo(1200, 9);
    expect(metres('3937 ft')).toBeCloseTo(1199.9976, 9);
  });

  it('takes a comma before three digits for thousands in feet, inches and millimetres only', () => {
    expect(metres('1,234 ft')).toBeCloseTo(1234 * 0.3048, 9);
    expect(metres('1,234.5 ft')).toBeCloseTo(1234.5 * 0.3048, 9);
    expect(metres(`1,234' 6"`)).toBeCloseTo(1234.5 * 0.3048, 9);
    expect(metres('7,180 mm')).toBeCloseTo(7.18, 12);
    expect(metres('2,691,742.75 usft')).toBeCloseTo((2691742.75 * 1200) / 3937, 6);
    expect(parseLength('1,234 m', 'ft')).toEqual({
      ok: false,
      code: 'ambiguous-comma',
      values: { text: '1,234', asDecimal: 1.234, asThousands: 1234 },
    });
    expect(metres('0,234 m')).toBe(0.234);
    expect(metres('1,234.0 m')).toBe(1234);
    expect(metres('1.234,5 m')).toBe(1234.5);
    expect(metres('1,234,567 m')).toBe(1234567);
    expect(metres('7,18 ft')).toBeCloseTo(7.18 * 0.3048, 12);
  });

  it.each([
    ['', 'empty'],
    ['   ', 'empty'],
    ['abc', 'not-a-number'],
    ['ft', 'not-a-number'],
    ['1e3', 'not-a-number'],
    ['1.2.3', 'not-a-number'],
    ['23 6', 'not-a-number'],
    ['5-', 'not-a-number'],
    [`23' 12"`, 'inches-too-large'],
    [`23' 11 16/16"`, 'improper-fraction'],
    [`23-13`, 'inches-too-large'],
    [`23.5' 6"`, 'feet-not-whole'],
    [`23 1/2' 6"`, 'feet-not-whole'],
    [`-5 ft`, 'negative'],
    [`−5 ft`, 'negative'],
    ['5 furlongs', 'unknown-unit'],
    ['5 %', 'unknown-unit'],
    ['5 m 20 cm', 'mixed-units'],
    [`23' 6'`, 'mixed-units'],
    [`23' 6 m`, 'mixed-units'],
    ['23-6 m', 'not-a-number'],
    ['1/0 in', 'zero-denominator'],
    [`23' 6 1/0"`, 'zero-denominator'],
    ['--5', 'two-signs'],
    ['+-5 ft', 'two-signs'],
    ['23--6', 'two-signs'],
    [`6-1/2"`, 'ambiguous-dash'],
    ['6-1/2', 'ambiguous-dash'],
    ['1e9 m', 'not-a-number'],
    ['1000000000 m', 'too-large'],
    ['9'.repeat(400), 'too-large'],
    [`${'9'.repeat(400)}/${'9'.repeat(400)}`, 'not-a-number'],
  ])('refuses "%s" as %s', (text, code) => {
    expect(parseLength(text, 'ft')).toMatchObject({ ok: false, code });
  });

  it('joins by a dash only where a bare number is feet or an inch mark follows', () => {
    expect(parseLength('23-6', 'm')).toMatchObject({ ok: false, code: 'ambiguous-dash' });
    expect(metres('23-6"', 'm')).toBeCloseTo(7.1628, 12);
  });

  it('carries what a message needs', () => {
    expect(parseLength(`23' 13 1/2"`, 'ft')).toMatchObject({ values: { inches: 13.5, limit: 12 } });
    expect(parseLength('5 furlongs', 'ft')).toMatchObject({ values: { unit: 'furlongs' } });
    expect(parseLength('1000000000 m', 'ft')).toMatchObject({ values: { limit: LENGTH_LIMIT_M } });
  });

  it('gives a sign to the whole length', () => {
    expect(metres(`-23' 6"`)).toBeCloseTo(-7.1628, 12);
    expect(metres('-23-6')).toBeCloseTo(-7.1628, 12);
  });

  it('never throws, and never gives a value that is not finite', () => {
    const alphabet = fc.constantFrom(...`0123456789.,/ -+'"′″½¼⅛ftinm()us`);
    fc.assert(
      fc.property(fc.string({ unit: alphabet, maxLength: 14 }), (text) => {
        const result = parseLength(text, 'ft-in');
        if (result.ok) expect(Number.isFinite(result.value) && result.value >= 0).toBe(true);
        else expect(result.code).not.toBe('');
      }),
      { numRuns: 3000 },
    );
  });
});

describe('formatLength', () => {
  const half = 282.5 * 0.0254;

  it('prints feet and inches with primes, or with the keyboard', () => {
    expect(formatLength(half, 'ft-in')).toBe('23′ 6½″');
    expect(formatLength(half, 'ft-in', { plain: true })).toBe(`23' 6 1/2"`);
    expect(formatLength(7.0104, 'ft-in')).toBe('23′ 0″');
    expect(formatLength(0.0127, 'ft-in')).toBe('½″');
    expect(formatLength(0, 'ft-in')).toBe('0″');
    expect(formatLength(287.9375 * 0.0254, 'ft-in', { denominator: 16 })).toBe('23′ 11 15⁄16″');
    expect(formatLength(287.9375 * 0.0254, 'ft-in', { denominator: 16, plain: true })).toBe(`23' 11 15/16"`);
    expect(formatLength(-half, 'ft-in')).toBe('−23′ 6½″');
    expect(formatLength(half, 'ft-in', { denominator: 1 })).toBe('23′ 7″');
  });

  it('carries into the next foot', () => {
    for (const denominator of [1, 2, 4, 8] as const)
      expect(formatLength(287.9375 * 0.0254, 'ft-in', { denominator })).toBe('24′ 0″');
    expect(formatLength(11.9375 * 0.0254, 'ft-in')).toBe('1′ 0″');
  });

  it('prints the other styles', () => {
    expect(formatLength(23.54 * 0.3048, 'ft')).toBe('23.54 ft');
    expect(formatLength(23.54 * 0.3048, 'ft', { decimals: 1 })).toBe('23.5 ft');
    expect(formatLength(7.18, 'm')).toBe('7.18 m');
    expect(formatLength(7.18, 'mm')).toBe('7180 mm');
    expect(formatLength(7.18, 'cm')).toBe('718.0 cm');
    expect(formatLength(half, 'in')).toBe('282.50 in');
    expect(formatLength(1200, 'usft')).toBe('3937.00 ft (US)');
    expect(formatLength(-7.18, 'm')).toBe('−7.18 m');
    expect(formatLength(-7.18, 'm', { plain: true })).toBe('-7.18 m');
  });

  it('prints no negative zero', () => {
    expect(formatLength(-0.001, 'm')).toBe('0.00 m');
    expect(formatLength(-0.001, 'ft-in')).toBe('0″');
  });

  it('throws for a value that is not finite', () => {
    expect(() => formatLength(Number.NaN, 'm')).toThrow(RangeError);
    expect(() => lengthInputText(Number.POSITIVE_INFINITY, 'ft-in')).toThrow(RangeError);
  });
});

describe('a printed length reads back', () => {
  const anyLength = fc.double({ min: -1e5, max: 1e5, noNaN: true });
  const FLOAT_M = 1e-9; // what binary rounding may add at 1e5 m

  it.each([1, 2, 4, 8, 16] as const)('in feet and inches to 1/%i', (denominator) => {
    fc.assert(
      fc.property(anyLength, fc.boolean(), (length, plain) => {
        const text = formatLength(length, 'ft-in', { denominator, plain });
        expect(Math.abs(metres(text, 'm') - length)).toBeLessThanOrEqual(0.0254 / denominator / 2 + FLOAT_M);
      }),
    );
  });

  it.each([
    ['ft', 0.3048],
    ['usft', 1200 / 3937],
    ['in', 0.0254],
    ['m', 1],
    ['cm', 0.01],
    ['mm', 0.001],
  ] as const)('in %s with 0 to 4 decimals', (style, unit) => {
    fc.assert(
      fc.property(anyLength, fc.integer({ min: 0, max: 4 }), fc.boolean(), (length, decimals, plain) => {
        const text = formatLength(length, style, { decimals, plain });
        expect(Math.abs(metres(text) - length)).toBeLessThanOrEqual((unit * 10 ** -decimals) / 2 + FLOAT_M);
      }),
    );
  });

  it.each([
    ['ft-in', 0.0254 / 16],
    ['ft', 0.3048e-4],
    ['usft', 0.3049e-4],
    ['in', 0.0254e-3],
    ['m', 1e-4],
    ['cm', 1e-4],
    ['mm', 1e-4],
  ] as const)('from the edit field in %s, and then prints the same again', (style, step) => {
    fc.assert(
      fc.property(anyLength, (length) => {
        const text = lengthInputText(length, style);
        expect(text).toMatch(/^[ -~]*$/);
        const back = metres(text);
        expect(Math.abs(back - length)).toBeLessThanOrEqual(step / 2 + FLOAT_M);
        expect(lengthInputText(back, style)).toBe(text);
      }),
    );
  });

  it('without trailing zeros in the edit field', () => {
    expect(lengthInputText(7.18, 'm')).toBe('7.18 m');
    expect(lengthInputText(23.54 * 0.3048, 'ft')).toBe('23.54 ft');
    expect(lengthInputText(282.5 * 0.0254, 'ft-in')).toBe(`23' 6 1/2"`);
    expect(lengthInputText(100, 'm')).toBe('100 m');
  });
});
