import { describe, expect, it } from 'vitest';
import { priceText } from './priceNames';

const FEET = { length: 'ft', diameter: 'in', direction: 'bearing' } as const;

describe('a price', () => {
  it('is told in whole units, with what it is without', () => {
    expect(priceText({ total: 12345.6, without: [] }, FEET)).toBe('12,346');
    expect(priceText({ total: 900, without: ['bend', 'dug'] }, FEET)).toBe(
      '900 without a bend; a cubic yard dug out and put back',
    );
    expect(priceText({ total: 0, without: ['lawn'] }, { ...FEET, length: 'm' })).toBe(
      '0 without a square metre of lawn',
    );
  });

  it('is not known where an amount is not', () => {
    expect(priceText(null, FEET)).toBe('not known');
  });
});
