import { describe, expect, it } from 'vitest';
import { accuracyGrade, accuracyText, roundedAccuracy } from './accuracy';

describe('accuracy', () => {
  it('warns beyond 10 m and calls a fix of 60 m too poor for control', () => {
    expect([3, 10, 10.5, 30, 31, 60].map(accuracyGrade)).toEqual([
      'good',
      'good',
      'fair',
      'fair',
      'poor',
      'poor',
    ]);
  });

  it('is never said to be better than it was stated', () => {
    expect(accuracyText(60, { length: 'ft-in' })).toBe('197 ft');
    expect(accuracyText(4.11, { length: 'm' })).toBe('4.2 m');
    expect(accuracyText(3 * 0.3048, { length: 'ft' })).toBe('3 ft');
    for (const unit of ['ft', 'm'] as const) {
      for (let metres = 0.05; metres < 100; metres += 0.37) {
        const rounded = roundedAccuracy(metres, unit);
        expect(rounded).toBeGreaterThanOrEqual(metres - 1e-6);
        expect(roundedAccuracy(rounded, unit)).toBeCloseTo(rounded, 9);
      }
    }
  });
});
