import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type ClockHour, formatClock, parseClockHour, parseClockRange } from './clock';

describe('parseClockHour', () => {
  it.each([
    ['3', 3],
    ['03', 3],
    ['3:00', 3],
    ["12 o'clock", 12],
    ['12 o’clock', 12],
    ['6 oclock', 6],
    ["3:00 O'Clock", 3],
  ])('reads %s', (text, expected) => {
    expect(parseClockHour(text)).toEqual({ ok: true, value: expected });
  });

  it.each([
    ['', 'empty'],
    ['top', 'not-a-number'],
    ['-3', 'not-a-number'],
    ['0', 'clock-out-of-range'],
    ['13', 'clock-out-of-range'],
    ['3:30', 'clock-not-whole-hour'],
    ['3.5', 'clock-not-whole-hour'],
  ])('refuses "%s" as %s', (text, code) => {
    expect(parseClockHour(text)).toMatchObject({ ok: false, code });
  });
});

describe('parseClockRange', () => {
  it.each([
    ['4-8', 4, 8],
    ['4 to 8', 4, 8],
    ['04–08', 4, 8],
    ["10 o'clock to 2 o'clock", 10, 2],
    ['3', 3, 3],
  ])('reads %s', (text, from, to) => {
    expect(parseClockRange(text)).toEqual({ ok: true, value: { from, to } });
  });

  it.each([
    ['', 'empty'],
    ['4-', 'not-a-number'],
    ['4-13', 'clock-out-of-range'],
    ['0 to 6', 'clock-out-of-range'],
    ['4-6-8', 'not-a-number'],
  ])('refuses "%s" as %s', (text, code) => {
    expect(parseClockRange(text)).toMatchObject({ ok: false, code });
  });
});

describe('formatClock', () => {
  it('prints one hour or a stretch', () => {
    expect(formatClock(3)).toBe('3 o’clock');
    expect(formatClock(3, { plain: true })).toBe("3 o'clock");
    expect(formatClock({ from: 4, to: 8 })).toBe('4–8 o’clock');
    expect(formatClock({ from: 3, to: 3 })).toBe('3 o’clock');
  });

  it('reads back', () => {
    const hour = fc.integer({ min: 1, max: 12 }) as fc.Arbitrary<ClockHour>; // the bounds are those of ClockHour
    fc.assert(
      fc.property(hour, hour, fc.boolean(), (from, to, plain) => {
        expect(parseClockRange(formatClock({ from, to }, { plain }))).toEqual({
          ok: true,
          value: { from, to },
        });
        expect(parseClockHour(formatClock(from, { plain }))).toEqual({ ok: true, value: from });
      }),
    );
  });
});
