import { describe, expect, it } from 'vitest';
import { isoNow } from './isoNow';

describe('an instant of this device', () => {
  it('is the same instant when it is read back, with an offset', () => {
    const now = new Date('2026-11-01T06:30:15Z');
    const text = isoNow(now);
    expect(text).toMatch(/^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d[+-]\d\d:\d\d$/);
    expect(Date.parse(text)).toBe(now.getTime());
  });

  it.each([
    [0, '2026-11-01T06:30:15+00:00'],
    [300, '2026-11-01T01:30:15-05:00'],
    [-345, '2026-11-01T12:15:15+05:45'],
  ])('has the day of its own clock, %i minutes behind UTC', (behind, text) => {
    const now = new Date('2026-11-01T06:30:15Z');
    now.getTimezoneOffset = () => behind;
    expect(isoNow(now)).toBe(text);
  });
});
