import { describe, expect, it } from 'vitest';
import { giveOrTakeText, sureText } from './en/sureText';
import { holeSizeText } from './sureText';

const feet = { length: 'ft' } as const;
const inches = { length: 'ft-in' } as const;
const metres = { length: 'm' } as const;

describe('how unsure something is', () => {
  // 0.3048 m is a foot, 0.0254 m an inch
  it.each([
    [0.24384, feet, '0.8 ft'],
    [0.24384, inches, '10″'],
    [0.7, inches, '2′ 4″'],
    [0.24384, metres, '0.24 m'],
    [-0.24384, metres, '0.24 m'],
    [0.01, feet, 'less than 0.1 ft'],
    [0.01, inches, 'less than 1″'],
    [0.004, metres, 'less than 0.01 m'],
    [0, feet, '0.0 ft'],
  ])('%f m is said as %s %s', (value, units, text) => {
    expect(sureText(value, units)).toBe(text);
  });

  it('has a sign only where there is a number', () => {
    expect(giveOrTakeText(0.24384, feet)).toBe('± 0.8 ft');
    expect(giveOrTakeText(0.01, feet)).toBe('less than 0.1 ft');
  });
});

describe('a hole', () => {
  it.each([
    [2 * 0.3048, 4 * 0.3048, '2 × 4 ft', '2 × 4 ft'],
    [2.01 * 0.3048, 4.4 * 0.3048, '2.5 × 4.5 ft', '2½ × 4½ ft'],
    [0.1, 0.1, '0.5 × 0.5 ft', '½ × ½ ft'],
  ])('of %f by %f m is rounded up to half feet', (length, width, decimal, fraction) => {
    expect(holeSizeText({ length, width }, feet)).toBe(decimal);
    expect(holeSizeText({ length, width }, inches)).toBe(fraction);
  });

  it('is rounded up to tenths of a metre, and a whole number of them stays', () => {
    expect(holeSizeText({ length: 0.71, width: 1.2 }, metres)).toBe('0.8 × 1.2 m');
    expect(holeSizeText({ length: 0.7, width: 0.1 + 0.2 }, metres)).toBe('0.7 × 0.3 m');
  });
});
