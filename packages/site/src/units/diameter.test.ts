import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatDiameter, parseDiameter } from './diameter';

describe('parseDiameter', () => {
  it.each([
    ['14"', 'in', 0.3556],
    ['14 in', 'mm', 0.3556],
    ['4', 'in', 0.1016],
    ['1 1/2"', 'in', 0.0381],
    ['1-1/2"', 'in', 0.0381],
    ['1½', 'in', 0.0381],
    ['100 mm', 'in', 0.1],
    ['100', 'mm', 0.1],
    ['⌀100', 'mm', 0.1],
    ['Ø 4"', 'mm', 0.1016],
    ['DN100', 'in', 0.1],
    ['dn 150', 'in', 0.15],
    [`1' 2"`, 'in', 0.3556],
  ] as const)('reads %s (bare: %s) as %f m', (text, unit, expected) => {
    const result = parseDiameter(text, unit);
    expect(result.ok && result.value).toBeCloseTo(expected, 12);
  });

  it.each([
    ['', 'empty'],
    ['0', 'not-positive'],
    ['-4"', 'negative'],
    ['4-6"', 'not-a-number'],
    ['DN', 'not-a-number'],
    ['4 elbows', 'unknown-unit'],
    ['4/0"', 'zero-denominator'],
  ])('refuses "%s" as %s', (text, code) => {
    expect(parseDiameter(text, 'in')).toMatchObject({ ok: false, code });
  });
});

describe('formatDiameter', () => {
  it('prints inches and millimetres', () => {
    expect(formatDiameter(0.1016, 'in')).toBe('4″');
    expect(formatDiameter(0.0381, 'in')).toBe('1½″');
    expect(formatDiameter(0.0381, 'in', { plain: true })).toBe('1 1/2"');
    expect(formatDiameter(0.1, 'mm')).toBe('100 mm');
    expect(() => formatDiameter(-0.1, 'mm')).toThrow(RangeError);
  });

  it('reads back within half a step', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 5, noNaN: true }), fc.boolean(), (size, plain) => {
        const inches = parseDiameter(formatDiameter(size, 'in', { plain }), 'mm');
        expect(Math.abs((inches.ok ? inches.value : Number.NaN) - size)).toBeLessThanOrEqual(
          0.0254 / 16 + 1e-12,
        );
        const millimetres = parseDiameter(formatDiameter(size, 'mm', { plain }), 'in');
        expect(Math.abs((millimetres.ok ? millimetres.value : Number.NaN) - size)).toBeLessThanOrEqual(
          0.0005 + 1e-12,
        );
      }),
    );
  });
});
